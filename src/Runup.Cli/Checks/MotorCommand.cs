using System.ComponentModel;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Diagnosis;
using Runup.Engineering.Motors.Ensemble;
using Runup.Files.Jobs;
using Runup.Files.Readings;
using Spectre.Console.Cli;

namespace Runup.Cli.Checks;

/// <summary><c>runup motor FILE</c>: what the plate tells.</summary>
internal sealed class MotorCommand : Command<MotorCommand.Settings>
{
    public override int Execute(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var read = JobFile.ReadMotor(settings.File) switch
        {
            MotorReading.Read it => it,
            MotorReading.Faulty faulty => throw new Complaint(ExitStatus.BadInput, faulty.Problems.Select(p => p.ToString())),
            _ => throw new InvalidOperationException("The set of readings is closed."),
        };
        var motor = MotorContext.For(read.Motor, settings.ExactPlate ? PlateTrust.Exact : PlateTrust.WithTolerances, Rows(settings.Readings));
        if (settings.Json)
        {
            JsonOut.Write(json =>
            {
                json.WriteStartObject();
                json.WriteString("tag", read.Tag);
                MotorJson.Write(json, motor.Circuit, motor.Known);
                MotorForecastJson.Write(json, motor.Known, motor.OnStarVoltage);
                FindingsJson.Findings(json, motor.Report);
                json.WriteEndObject();
            });
        }
        else
        {
            MotorPage.Write(new Page(Console.Out), read.Tag, motor);
        }

        return (int)(motor.Report.Verdict.BlockedBy.Count > 0 ? ExitStatus.Blocked : ExitStatus.Fine);
    }

    private static IReadOnlyList<ReadingRow> Rows(string? file) => (file is null ? null : ReadingsFile.Read(file)) switch
    {
        null => [],
        ReadingsText.Read(var rows) => rows,
        ReadingsText.Faulty(var problems) => throw new Complaint(ExitStatus.BadInput, problems.Select(p => p.ToString())),
        _ => throw new InvalidOperationException("The set of readings is closed."),
    };

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<FILE>")]
        [Description("A job file, or a file with only the motor part")]
        public string File { get; set; } = "";

        [CommandOption("--json")]
        [Description("One JSON document on standard output")]
        public bool Json { get; set; }

        [CommandOption("--exact-plate")]
        [Description("Take the plate as exact (textbook circuits), not with the tolerances of IEC 60034-1; the best fit is the same, the bands differ")]
        public bool ExactPlate { get; set; }

        [CommandOption("--readings <FILE>")]
        [Description("Readings taken on the motor (*.readings.csv); the bands with them stand beside those before")]
        public string? Readings { get; set; }
    }
}
