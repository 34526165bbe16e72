using Microsoft.Extensions.Time.Testing;
using Runup.Commissioning.Entry;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>A drive, its link, a person and a record, in fake time.</summary>
internal sealed class BenchSite : IDriveLinks
{
    internal const string Tag = "BNC-1";

    internal BenchSite()
    {
        Drive = new(Time);
        Person = new(Time);
        Person.CyclesPower = () =>
        {
            Drive.PowerCycle();
            Link!.Dead = true;
            return Task.FromResult<PersonSays>(new PersonSays.Yes("A. Person"));
        };
    }

    internal static SettingSet Plan { get; } = SettingSet.Empty
        .With(Setting.PowerUnit, "hp").With(Setting.MotorRatedPower, 7457).With(Setting.MotorRatedVoltage, 400).With(Setting.MotorRatedCurrent, 14.4)
        .With(Setting.BaseFrequency, 50).With(Setting.MaximumFrequency, 50).With(Setting.MinimumFrequency, 20)
        .With(Setting.AccelerationTime, 8).With(Setting.DecelerationTime, 12)
        .With(Setting.BusTimeout, 2).With(Setting.BusLossAction, "ramp")
        .With(Setting.RunCommandSource, "terminals").With(Setting.PermittedDirection, "forward").With(Setting.FrequencyReferenceSource, "analogue-1")
        .With(Setting.RestartAfterPowerLoss, "on").With(Setting.MotorPowerFactor, 0.8);

    internal FakeTimeProvider Time { get; } = new() { AutoAdvanceAmount = TimeSpan.Zero };

    internal BenchDrive Drive { get; }

    internal BenchPerson Person { get; }

    internal BenchRecords Records { get; } = new();

    internal BenchLink? Link { get; private set; }

    internal List<(TimeSpan At, BenchOp Op)> Log { get; } = [];

    internal Func<BenchOp, Mishap> Script { get; set; } = _ => Mishap.None;

    internal TimeSpan Latency { get; set; }

    internal int OpeningsThatFail { get; set; }

    internal Action? Cut { get; set; }

    internal List<EntryEvent> Told { get; } = [];

    internal static EntrySheet Sheet(SettingSet? plan = null) =>
        EntrySheet.From(Profiles.Sheet.For(BenchMake.Profile, BenchMake.Size, plan ?? Plan, ParameterValues.Defaults(BenchMake.Profile, BenchMake.Size)));

    internal static EntryTask Job(EntrySheet? sheet = null) => new() { Tag = Tag, Profile = BenchMake.Profile, Size = BenchMake.Size, Sheet = sheet ?? Sheet() };

    public Task<LinkOpening> Open(CancellationToken cancellation)
    {
        Cut?.Invoke();
        if (OpeningsThatFail > 0)
        {
            OpeningsThatFail--;
            return Task.FromResult<LinkOpening>(new LinkOpening.Failed("nobody listens"));
        }

        Link = new BenchLink(Drive, Time) { Log = Log, Script = op => Script(op), Latency = Latency, Cut = Cut };
        return Task.FromResult<LinkOpening>(new LinkOpening.Opened(Link));
    }

    internal EntryReport Enter(EntryTask? task = null, CancellationToken cancellation = default) =>
        Pump.Run(Time, () => new EnterSheet(task ?? Job(), this, Records, Person, Time, new Immediately(Told)).Run(cancellation));

    internal IEnumerable<BenchOp> Sent(string kind) => Log.Where(l => l.Op.Kind == kind).Select(l => l.Op);

    private sealed class Immediately(List<EntryEvent> told) : IProgress<EntryEvent>
    {
        public void Report(EntryEvent value) => told.Add(value);
    }
}
