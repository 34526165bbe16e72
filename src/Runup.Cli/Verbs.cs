using Runup.Cli.Checks;
using Runup.Cli.Comparison;
using Runup.Cli.Demo;
using Runup.Cli.Entry;
using Runup.Cli.FirstRun;
using Runup.Cli.Handover;
using Runup.Cli.Plan;
using Runup.Cli.DriveProfiles;
using Runup.Cli.Rehearsal;
using Runup.Cli.Sheet;
using Runup.Cli.Simulate;
using Runup.Cli.Survey;
using Runup.Cli.Translation;
using Spectre.Console.Cli;

namespace Runup.Cli;

/// <summary>The verbs, in the order of the job, each with an example.</summary>
internal static class Verbs
{
    internal static void Configure(IConfigurator config)
    {
        config.SetApplicationName("runup");
        config.SetApplicationVersion(typeof(Verbs).Assembly.GetName().Version!.ToString(3));
        config.PropagateExceptions();
        config.UseStrictParsing();
        config.ValidateExamples();
        config.AddCommand<DemoCommand>("demo")
            .WithDescription("The whole job on the demo site, against six simulated drives at once, to the handovers and the site's summary")
            .WithExample("demo", "somewhere");
        config.AddCommand<NewCommand>("new")
            .WithDescription("A commented job file to fill in")
            .WithExample("new", "swp-101");
        config.AddCommand<MotorCommand>("motor")
            .WithDescription("What the plate tells: circuit and predictions (a file with only the motor part will do)")
            .WithExample("motor", "swp-101.job.yaml");
        config.AddCommand<CheckCommand>("check")
            .WithDescription("Does it all fit? Findings with evidence")
            .WithExample("check", "swp-101.job.yaml")
            .WithExample("check", "swp-101.job.yaml", "--accept", "machine.low-speed-cooling", "--by", "\"N. Ostre\"", "--because", "\"it is never run below 20 Hz\"");
        config.AddCommand<SettingsCommand>("settings")
            .WithDescription("Make-independent settings, each with its reason")
            .WithExample("settings", "swp-101.job.yaml");
        config.AddCommand<SheetCommand>("sheet")
            .WithDescription("The same in this drive's own parameters, in order of entry")
            .WithExample("sheet", "swp-101.job.yaml", "--must", "--html", "swp-101.html");
        config.AddCommand<RehearseCommand>("rehearse")
            .WithDescription("Simulate the first start and stop before power")
            .WithExample("rehearse", "swp-101.job.yaml")
            .WithExample("rehearse", "swp-101.job.yaml", "--ensemble", "--plot", "swp-101.svg");
        config.AddCommand<SimulateCommand>("simulate")
            .WithDescription("Serve the simulated drive of a job, or all of a folder")
            .WithExample("simulate", "swp-101.job.yaml", "--tcp", "1502");
        config.AddCommand<ReadCommand>("read")
            .WithDescription("Keep the drive as found; writes nothing to it")
            .WithExample("read", "swp-101.job.yaml", "--link", "tcp://192.168.1.40:502/1")
            .WithExample("read", "swp-101.job.yaml", "--by-hand", "--by", "'A. Person'");
        config.AddCommand<EnterCommand>("enter")
            .WithDescription("Write the sheet, read it back and prove it; goes on where it was cut off. Status 0 when nothing failed to be entered, also while the proof after power-off is still open")
            .WithExample("enter", "swp-101.job.yaml", "--link", "tcp://192.168.1.40:502/1")
            .WithExample("enter", "swp-101.job.yaml", "--by-hand", "--by", "'A. Person'");
        config.AddCommand<RestoreCommand>("restore")
            .WithDescription("Back to as found, with the same proofs")
            .WithExample("restore", "swp-101.job.yaml", "--link", "tcp://192.168.1.40:502/1")
            .WithExample("restore", "swp-101.job.yaml", "--by-hand", "--by", "'A. Person'");
        config.AddCommand<FirstRunCommand>("first-run")
            .WithDescription("Guided first run: you run the motor, each reading is held against what was predicted; goes on where it was cut off. Nothing is sent that could run it")
            .WithExample("first-run", "swp-101.job.yaml", "--by", "'A. Person'")
            .WithExample("first-run", "swp-101.job.yaml", "--link", "tcp://192.168.1.40:502/1")
            .WithExample("first-run", "swp-101.job.yaml", "--again", "coupled-range");
        config.AddCommand<CompareCommand>("compare")
            .WithDescription("Two states of drives side by side: from the factory, as planned, as found, as left, a restore file, a table, or a drive asked now; what differs, and what it does")
            .WithExample("compare", "swp-101.job.yaml:as-found", "swp-101.job.yaml:plan")
            .WithExample("compare", "swp-101.job.yaml:as-left", "tcp://192.168.1.40:502/1");
        config.AddCommand<TranslateCommand>("translate")
            .WithDescription("An old drive's settings in a new drive's parameters: as left where that is recorded, else as found, else as planned; what is kept, converted, not offered, to be decided, and newly asked for")
            .WithExample("translate", "swp-101.job.yaml", "--to", "osprey", "--size", "7.5-400");
        config.AddCommand<HandoverCommand>("handover")
            .WithDescription("The report (HTML, and PDF where a browser can print it), the file that restores the drive, and a label for the door")
            .WithExample("handover", "swp-101.job.yaml")
            .WithExample("handover", "swp-101.job.yaml", "--paper", "letter");
        config.AddBranch("profile", profile =>
        {
            profile.SetDescription("Drive profiles: look for what is wrong, make one from a manual's table or an EDS file, show one");
            profile.AddExample("profile", "lint", "tern");
            profile.AddCommand<LintCommand>("lint")
                .WithDescription("Is the profile sound? Everything that is wrong, each with its line")
                .WithExample("profile", "lint", "wren.drive.yaml");
            profile.AddCommand<ImportCommand>("import")
                .WithDescription("Make the draft of a profile from a manual's table (csv, xlsx, pasted text) or an EDS file, with what each row may mean; without --to it only shows")
                .WithExample("profile", "import", "manual.csv", "--to", "wren.drive.yaml");
            profile.AddCommand<ShowCommand>("show")
                .WithDescription("What a profile says: sizes, what its parameters mean, what it leaves open")
                .WithExample("profile", "show", "tern");
        });
    }
}
