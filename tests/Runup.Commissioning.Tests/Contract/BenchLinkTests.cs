using Microsoft.Extensions.Time.Testing;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Tests.Bench;

namespace Runup.Commissioning.Tests.Contract;

/// <summary>The link that other tests stand on keeps to the contract, too.</summary>
public sealed class BenchLinkTests : DriveLinkContract
{
    private protected override void On(Func<IContractBench, Task> test)
    {
        var time = new FakeTimeProvider();
        Pump.Run(time, async () =>
        {
            await test(new OnBench(time));
            return true;
        });
    }

    private sealed class OnBench : IContractBench
    {
        private readonly BenchLink link;

        internal OnBench(FakeTimeProvider time)
        {
            (Time, Drive) = (time, new BenchDrive(time));
            link = new BenchLink(Drive, time) { Script = _ => Mishap };
        }

        public IDriveLink Link => link;

        public BenchDrive Drive { get; }

        public TimeProvider Time { get; }

        public Mishap Mishap { get; set; }

        public Task PullCable()
        {
            link.Dead = true;
            return Task.CompletedTask;
        }
    }
}
