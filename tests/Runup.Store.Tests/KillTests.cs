using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using Runup.Commissioning.Records;
using Runup.Store.Chain;

namespace Runup.Store.Tests;

public sealed class KillTests : IDisposable
{
    private const string Variable = "RUNUP_STORE_TEST_APPENDS_TO";

    private readonly SiteFolder folder = new();

    [Fact]
    public async Task What_append_returned_survives_a_kill_and_the_next_writer_goes_on()
    {
        var random = new Random(20261124);
        var acknowledged = 0L;
        for (var kill = 0; kill < 5; kill++)
        {
            acknowledged = await KilledAfter(acknowledged + random.Next(1, 40));
            using var records = folder.Open();
            var intact = (await records.Verify(null, default)).ShouldBeOfType<ChainVerdict.Intact>();
            intact.Entries.ShouldBeGreaterThanOrEqualTo(acknowledged);
            acknowledged = intact.Entries;
        }
    }

    public void Dispose() => folder.Dispose();

    // The test program starts itself; with the variable set it only appends, and says the number of each entry once it was returned.
    [ModuleInitializer]
    internal static void AppendUntilKilled()
    {
        if (Environment.GetEnvironmentVariable(Variable) is not { } site)
        {
            return;
        }

        using var records = ((StoreOpening.Opened)SqliteRecords.Open(site, TimeProvider.System)).Records;
        while (true)
        {
            var recorded = records.Append("P-101", new RecordBody.StepBegun("again"), default).GetAwaiter().GetResult();
            Console.Out.WriteLine(recorded.Sequence.ToString(CultureInfo.InvariantCulture));
            Console.Out.Flush();
        }
    }

    private async Task<long> KilledAfter(long entries)
    {
        using var process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!)
        {
            UseShellExecute = false,
            Environment = { [Variable] = folder.Path },
            RedirectStandardOutput = true,
        })!;
        var last = 0L;
        while (await process.StandardOutput.ReadLineAsync(default(CancellationToken)) is { } line)
        {
            last = long.Parse(line, CultureInfo.InvariantCulture);
            if (last == entries)
            {
                process.Kill();
            }
        }

        await process.WaitForExitAsync(default(CancellationToken));
        last.ShouldBeGreaterThanOrEqualTo(entries);
        return last;
    }
}
