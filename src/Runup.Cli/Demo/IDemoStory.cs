using Runup.Cli.Handover;
using Runup.Cli.Survey;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Dynamics;
using Runup.Profiles;

namespace Runup.Cli.Demo;

/// <summary>What is told of a set as its job goes on.</summary>
internal interface IDemoStory : IProgress<StepReport>
{
    /// <summary>The survey as first written was checked.</summary>
    void Surveyed(CheckReport report);

    /// <summary>The job as it stands was checked.</summary>
    void Checked(LoadedJob job, CheckReport report);

    /// <summary>The settings are decided.</summary>
    void Planned(LoadedJob job, SettingsPlan plan, IReadOnlyList<SheetLine> lines);

    /// <summary>The start was rehearsed.</summary>
    void Rehearsed(LoadedJob job, RehearsalResult result);

    /// <summary>The sheet was entered.</summary>
    void Entered(LoadedJob job, string link, EntryReport report);

    /// <summary>The first run begins.</summary>
    void Runs(FirstRunPlan plan);

    /// <summary>The first run ended; how many confirmations were given, and how many words that would run the motor the drive saw.</summary>
    void Ran(FirstRunReport report, int confirmations, int enableWords);

    /// <summary>The handover was written.</summary>
    void HandedOver(HandoverFiles files);

    /// <summary>It could not be done to its end.</summary>
    void Failed(string why);
}
