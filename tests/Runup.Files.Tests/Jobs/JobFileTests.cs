using System.Collections;
using System.Globalization;
using Runup.Commissioning.Survey;
using Runup.Files.Jobs;

namespace Runup.Files.Tests.Jobs;

public sealed class JobFileTests : IDisposable
{
    private const string Small = """
        runup: 1
        tag: P-1
        supply: {voltage: 400 V, frequency: 50 Hz}
        motor:
          plate: {output: 7.5 kW, voltage: 400 V, current: 14.4 A, frequency: 50 Hz, speed: 1460 rpm}
        drive: {profile: tern, size: 7.5-400}
        machine: {load: quadratic, torque: 42 N·m, at-speed: 1460 rpm}
        operation: {maximum-frequency: 50 Hz}
        """;

    private readonly string folder = FullJob.Folder(Directory.CreateTempSubdirectory("runup-job-").FullName);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_key_of_the_table_arrives_in_the_job()
    {
        var job = Read(FullJob.Text).Job;
        Nulls(job, "job").ShouldBeEmpty();
    }

    [Fact]
    public void The_full_job_holds_every_key_of_the_table() =>
        JobKeys.Paths(JobKeys.Top, "").Where(p => !FullJob.Text.Contains(p[(p.LastIndexOf('.') + 1)..] + ":", StringComparison.Ordinal)).ShouldBeEmpty();

    [Fact]
    public void Quantities_arrive_in_SI_with_what_was_written_and_its_rounding()
    {
        var plate = Read(FullJob.Text).Job.Motor.Plate;
        plate.Output.Value.Watts.ShouldBe(7500);
        plate.Output.AsWritten.ShouldBe("7.5 kW");
        plate.Output.RoundingSi.ShouldBe(50, 1e-9);
        plate.Output.From.ShouldBe(Provenance.Plate);
        plate.Output.Error!.Value.Percent.ShouldBe(2, 1e-12);
        plate.Output.Note.ShouldBe("worn, but legible");
        plate.Current.From.ShouldBe(Provenance.Unstated);
        plate.Efficiency!.RoundingSi.ShouldBe(0.0005, 1e-12);
    }

    [Fact]
    public void The_smallest_job_is_read_and_what_was_not_surveyed_is_null()
    {
        var job = Read(Small).Job;
        job.Motor.Kind.ShouldBe(new Datum<MotorKind>(MotorKind.Induction, Provenance.Assumed));
        job.Cable.Length.ShouldBeNull();
        job.Bus.Kind.ShouldBeNull();
        job.Operation.Cycle.ShouldBeEmpty();
    }

    [Fact]
    public void Curves_are_read_from_the_jobs_folder()
    {
        var machine = Read(Small.Replace("quadratic, torque: 42 N·m, at-speed: 1460 rpm", "table, curve: pump.csv", StringComparison.Ordinal)).Job.Machine;
        machine.Curve!.Select(p => (Math.Round(p.Speed.Rpm, 6), p.Torque.NewtonMetres)).ShouldBe([(0, 2.5), (730, 10.5), (1460, 42)]);
        machine.CurveFile!.Value.ShouldBe("pump.csv");
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once_in_the_order_of_the_file() => FullJob.Problems("""
        runup: 1
        tga: P-1
        supply: {voltage: 400, frequency: 50 Hz, phases: 2}
        motor:
          speed: 1460 rpm
          plate: {output: 7,5 kW, voltage: 400 V, current: -14.4 A, frequency: 50 Hz, speed: 24 Hz, power-factor: 90.4}
        drive: {profile: tern}
        machine: {load: hoisting}
        operation: {maximum-frequency: 50 Hz, minimum-frequency: 60 Hz}
        """).ShouldBe([
        "swp.job.yaml:1:1 tag: it is missing; text, such as `SWP-101`, would do",
        "swp.job.yaml:2:1 tga: there is no such key here; `tag` would do, if that is meant",
        "swp.job.yaml:3:19 supply.voltage: `400` has no unit; V, kV or mV would do",
        "swp.job.yaml:3:50 supply.phases: `2`; one of `3`, `1` would do",
        "swp.job.yaml:5:3 motor.speed: there is no such key here; it belongs at `motor.plate.speed`",
        "swp.job.yaml:6:19 motor.plate.output: `7,5 kW` in braces, where a comma ends a value; a decimal point would do, or the value in quotes",
        "swp.job.yaml:6:52 motor.plate.current: `-14.4 A`; a value above zero would do",
        "swp.job.yaml:6:86 motor.plate.speed: `24 Hz` is a frequency; a speed is wanted here: rpm, rad/s or 1/s would do",
        "swp.job.yaml:6:107 motor.plate.power-factor: `90.4`; more than 0 and at most 1 would do",
        "swp.job.yaml:7:1 drive.size: it is missing; text, such as `\"7.5-400\"`, would do",
        "swp.job.yaml:8:1 machine.mass: it is missing; a number with its unit (kg, g, t, lb), such as `500 kg`, would do",
        "swp.job.yaml:8:1 machine.drum-diameter: it is missing; a number with its unit (m, mm, cm, km), such as `0.3 m`, would do",
        "swp.job.yaml:9:58 operation.minimum-frequency: `60 Hz` lies above the highest frequency, `50 Hz`; are the two swapped?"]);

    [Fact]
    public void A_key_spelled_right_in_the_wrong_place_is_sent_to_its_own_not_to_one_spelled_alike() =>
        FullJob.Problems("plate: {output: 7.5 kW}").ShouldContain("swp.job.yaml:1:1 plate: there is no such key here; it belongs at `motor.plate`");

    [Fact]
    public void An_empty_map_misses_every_needed_key_by_its_path() =>
        FullJob.Problems("{}").Select(p => p.Split(' ')[1]).ShouldBe([
            "runup:", "tag:", "supply.voltage:", "supply.frequency:", "motor.plate.output:", "motor.plate.voltage:", "motor.plate.current:", "motor.plate.frequency:",
            "motor.plate.speed:", "drive.profile:", "drive.size:", "machine.load:", "operation.maximum-frequency:"]);

    [Theory]
    [InlineData("constant", "machine.torque", "machine.at-speed")]
    [InlineData("linear", "machine.torque", "machine.at-speed")]
    [InlineData("quadratic", "machine.torque", "machine.at-speed")]
    [InlineData("constant-power", "machine.torque", "machine.at-speed")]
    [InlineData("hoisting", "machine.mass", "machine.drum-diameter")]
    [InlineData("table", "machine.curve")]
    [InlineData("{value: table, from: told}", "machine.curve")]
    public void Each_shape_of_load_needs_its_own_keys(string load, params string[] needed) =>
        FullJob.Problems(Small.Replace("{load: quadratic, torque: 42 N·m, at-speed: 1460 rpm}", $"{{load: {load}}}", StringComparison.Ordinal))
            .Select(p => p.Split(' ')[1].TrimEnd(':')).ShouldBe(needed);

    [Fact]
    public void What_the_load_does_not_use_is_said_and_kept()
    {
        var read = Read(Small.Replace("machine: {load: quadratic,", "machine: {load: hoisting, mass: 500 kg, drum-diameter: 0.3 m,", StringComparison.Ordinal));
        read.Notes.Select(n => n.ToString()).ShouldBe([
            "swp.job.yaml:7:63 machine.torque: is kept but not used with the load `hoisting`",
            "swp.job.yaml:7:79 machine.at-speed: is kept but not used with the load `hoisting`"]);
        read.Job.Machine.Torque!.Value.NewtonMetres.ShouldBe(42);
    }

    [Fact]
    public void A_newer_format_is_refused_and_nothing_else_is_judged() =>
        FullJob.Problems("runup: 2\nnew-key: 1\n").ShouldBe(["swp.job.yaml:1:8 runup: format 2, and this program knows formats up to 1; a newer runup would do"]);

    [Theory]
    [InlineData("runup: 0")]
    [InlineData("runup: one")]
    [InlineData("runup: {}")]
    public void A_format_that_is_no_version_is_a_problem(string line) =>
        FullJob.Problems(Small.Replace("runup: 1", line, StringComparison.Ordinal)).ShouldHaveSingleItem().ShouldContain("runup: ");

    [Theory]
    [InlineData("../pump.csv")]
    [InlineData("/etc/passwd")]
    [InlineData("a/../../pump.csv")]
    [InlineData("..\\pump.csv")]
    [InlineData("C:pump.csv")]
    [InlineData("C:\\pump.csv")]
    [InlineData("./pump.csv")]
    [InlineData("a//pump.csv")]
    public void A_curve_never_leads_out_of_the_folder(string name) =>
        FullJob.Problems(WithCurve($"'{name}'"), folder).ShouldHaveSingleItem().ShouldEndWith("a file in the job's folder would do, named without `..` and with `/` between folders");

    [Fact]
    public void A_curve_that_is_not_there_is_told_with_its_own_name() =>
        FullJob.Problems(WithCurve("none.csv"), folder).ShouldBe([
            "swp.job.yaml:7:31 machine.curve: the curve `none.csv` can't be read; put right what is told of it",
            $"{Path.Combine(folder, "none.csv")}:1:1 (file): there is no such file; check the name"]);

    [Fact]
    public void What_is_wrong_in_a_curve_is_told_with_its_lines()
    {
        var path = Path.Combine(folder, "bad.csv");
        File.WriteAllText(path, "speed_rpm,torque_Nm\n0,1\n700,x\n600,\n");
        FullJob.Problems(WithCurve("bad.csv"), folder).Skip(1).ShouldBe([
            $"{path}:3:5 torque_Nm: `x` does not begin with a number; a number without a unit would do",
            $"{path}:4:5 torque_Nm: an empty cell; a number without a unit would do"], ignoreOrder: true);
        File.WriteAllText(path, "speed_rpm,torque_Nm\n0,1\n700,2\n600,3\n");
        FullJob.Problems(WithCurve("bad.csv"), folder).ShouldContain($"{path}:4:1 speed_rpm: `600`; each row lies above the one before");
        File.WriteAllText(path, "rpm,torque_Nm\n0,1\n");
        FullJob.Problems(WithCurve("bad.csv"), folder).ShouldContain($"{path}:1:1 speed_rpm: there is no such column; columns `speed_rpm`, `torque_Nm` would do");
    }

    [Fact]
    public void A_text_without_a_folder_names_no_files() =>
        FullJob.Problems(WithCurve("pump.csv")).ShouldHaveSingleItem().ShouldContain("is read from its folder");

    [Fact]
    public void The_error_of_a_datum_is_a_part_of_its_value() =>
        FullJob.Problems(Small.Replace("output: 7.5 kW", "output: {value: 7.5 kW, error: 0.1 kW, form: plate}", StringComparison.Ordinal)).ShouldBe([
            "swp.job.yaml:5:42 motor.plate.output.error: `0.1 kW` is a power; a fraction is wanted here: % or ‰ would do",
            "swp.job.yaml:5:50 motor.plate.output.form: there is no such key here; `from` would do"]);

    [Fact]
    public void A_point_among_decimal_commas_is_asked_about() =>
        FullJob.Problems(Small.Replace("7.5 kW", "\"7,5 kW\"", StringComparison.Ordinal).Replace("42 N·m", "1.250 N·m", StringComparison.Ordinal)).ShouldBe([
            "swp.job.yaml:7:36 machine.torque: `1.250 N·m` among decimal commas can mean a thousand times as much; which is meant? Write `1250 N·m` or `1.2500 N·m`"]);

    [Fact]
    public void A_point_among_points_is_a_decimal_point() =>
        Read(Small.Replace("42 N·m", "1.250 N·m", StringComparison.Ordinal)).Job.Machine.Torque!.Value.NewtonMetres.ShouldBe(1.25);

    [Fact]
    public void A_line_reactor_is_a_part_or_an_inductance()
    {
        SupplySurvey Supply(string text) => Read(Small.Replace("frequency: 50 Hz}\nmotor", $"frequency: 50 Hz, line-reactor: {text}}}\nmotor", StringComparison.Ordinal)).Job.Supply;
        Supply("3 %").LineReactorFraction!.Value.Percent.ShouldBe(3, 1e-12);
        Supply("0.8 mH").LineReactorInductance!.Value.Henries.ShouldBe(0.0008, 1e-15);
        Supply("{value: 0.8 mH, from: drawing}").LineReactorInductance!.From.ShouldBe(Provenance.Drawing);
    }

    [Fact]
    public void Bus_none_says_that_there_is_no_bus() => Read(Small + "\nbus: none\n").Job.Bus.Kind!.Value.ShouldBe("none");

    [Theory]
    [InlineData("no")]
    [InlineData("None")]
    public void No_explosive_zone_is_one_word_however_written(string written) =>
        Read(Small + $"\nplace: {{explosive-zone: {written}}}\n").Job.Place.ExplosiveZone!.Value.ShouldBe("none");

    [Theory]
    [InlineData("\"\\e[31mP\"", "an escape for the control character U+001B")]
    [InlineData("\"a\\0b\"", "an escape for a NUL character")]
    [InlineData("\"a\\rb\"", "an escape for a carriage return")]
    [InlineData("\"a\\u202Eb\"", "an escape for a character that reverses the direction of reading")]
    [InlineData("\"a\\nb\"", "one line of 1 to 200 characters would do")]
    [InlineData("\"a\\tb\"", "one line of 1 to 200 characters would do")]
    [InlineData("\"a\uFFFDb\"", "one line of 1 to 200 characters would do")]
    [InlineData("\"\"", "one line of 1 to 200 characters would do")]
    [InlineData("\"  \"", "one line of 1 to 200 characters would do")]
    public void A_tag_can_be_shown_and_recorded_whatever_escapes_it_is_written_with(string tag, string told) =>
        FullJob.Problems(Small.Replace("tag: P-1", "tag: " + tag, StringComparison.Ordinal)).ShouldHaveSingleItem().ShouldContain(told);

    [Theory]
    [InlineData("torque: 42 N·m", "torque: 1e308 N·m")]
    [InlineData("at-speed: 1460 rpm", "at-speed: 1e-308 rpm")]
    [InlineData("maximum-frequency: 50 Hz", "maximum-frequency: 1e13 Hz")]
    [InlineData("voltage: 400 V, frequency", "voltage: 1e300 V, frequency")]
    public void A_figure_that_no_machine_has_is_refused_before_anybody_reckons_with_it(string sound, string absurd) =>
        FullJob.Problems(Small.Replace(sound, absurd, StringComparison.Ordinal)).ShouldHaveSingleItem().ShouldContain("no machine has such a figure");

    [Fact]
    public void A_heading_with_nothing_beneath_is_as_good_as_none() => Read(Small + "\ncable:\nplace:\n  # ambient: 35 °C\n").Job.Cable.Length.ShouldBeNull();

    [Fact]
    public void American_spellings_are_read()
    {
        var job = Read("""
            runup: 1
            tag: P-2
            supply: {voltage: 460 V, frequency: 60 Hz}
            motor:
              plate: {standard: NEMA, output: 7 1/2 hp, voltage: 460 V, connection: wye, current: 9.8 A, frequency: 60 Hz, speed: 1765 rpm}
              inertia: 0.83 lb·ft²
            drive: {profile: tern, size: 7.5-400}
            cable: {length: 210 ft, section: 10 AWG, conductor: aluminum}
            machine: {load: constant, torque: 30 lb.ft, at-speed: 1750 rpm}
            operation: {maximum-frequency: 60 Hz}
            place: {ambient: 95 °F}
            """).Job;
        job.Motor.Plate.Output.Value.Watts.ShouldBe(5592.749, 0.001);
        job.Cable.Conductor!.Value.ShouldBe("aluminium");
        job.Place.Ambient!.Value.Celsius.ShouldBe(35, 1e-9);
    }

    [Fact]
    public void A_motor_is_read_from_a_file_with_nothing_else()
    {
        var read = JobFile.ReadMotorText("motor:\n  plate: {output: 7.5 kW, voltage: 400 V, current: 14.4 A, frequency: 50 Hz, speed: 1460 rpm}\n", "m.yaml").ShouldBeOfType<MotorReading.Read>();
        read.Tag.ShouldBeNull();
        read.Motor.Plate.Output.Value.Watts.ShouldBe(7500);
        JobFile.ReadMotorText(Small, "m.yaml").ShouldBeOfType<MotorReading.Read>().Tag.ShouldBe("P-1");
    }

    [Fact]
    public void A_motor_file_is_as_strict_with_what_it_holds() =>
        JobFile.ReadMotorText("motor:\n  plate: {output: 7.5 kW, voltage: 400 V, frequency: 50 Hz, speed: 1460 rpm}\nsupply: {voltage: 5}\n", "m.yaml")
            .ShouldBeOfType<MotorReading.Faulty>().Problems.Select(p => p.ToString()).ShouldBe([
                "m.yaml:2:3 motor.plate.current: it is missing; a number with its unit (A, mA, kA), such as `14.4 A`, would do",
                "m.yaml:3:19 supply.voltage: `5` has no unit; V, kV or mV would do"]);

    [Fact]
    public void A_file_that_is_not_there_is_a_problem() =>
        JobFile.Read(Path.Combine(folder, "none.job.yaml")).ShouldBeOfType<JobReading.Faulty>().Problems.ShouldHaveSingleItem();

    [Fact]
    public void A_file_on_disk_is_read_with_its_curves()
    {
        var path = Path.Combine(folder, "swp.job.yaml");
        File.WriteAllText(path, FullJob.Text);
        JobFile.Read(path).ShouldBeOfType<JobReading.Read>().Job.Motor.ContinuousTorque!.Count.ShouldBe(3);
        JobFile.ReadMotor(path).ShouldBeOfType<MotorReading.Read>();
    }

    [Fact]
    public void The_region_of_the_machine_changes_nothing()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = ",", NumberGroupSeparator = ".", NegativeSign = "~" } };
            Read(FullJob.Text).Job.Motor.Plate.Output.Value.Watts.ShouldBe(7500);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Of_very_many_problems_some_are_told_and_the_rest_counted()
    {
        var problems = FullJob.Problems(Small + "\n" + string.Concat(Enumerable.Range(0, 50_000).Select(i => $"key{i}: 1\n")));
        problems.Count.ShouldBe(201);
        problems[^1].ShouldBe("swp.job.yaml:1:1 (file): 49800 problems more; put right those above first; or is it another kind of file?");
    }

    private static string WithCurve(string name) =>
        Small.Replace("quadratic, torque: 42 N·m, at-speed: 1460 rpm", $"table, curve: {name}", StringComparison.Ordinal);

    private JobReading.Read Read(string text) => FullJob.Read(text, folder) switch
    {
        JobReading.Read read => read,
        JobReading.Faulty f => throw new Xunit.Sdk.XunitException(string.Join('\n', f.Problems)),
        _ => throw new InvalidOperationException(),
    };

    // A job that holds every key has no null anywhere, but for the reactor, which is stated in one of two ways, and what a plain datum does not say.
    private static IEnumerable<string> Nulls(object value, string path)
    {
        foreach (var property in value.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0))
        {
            var inner = property.GetValue(value);
            if (inner is null)
            {
                if (property.Name is not ("LineReactorInductance" or "OnLoss" or "Note" or "Error" or "Photo"))
                {
                    yield return $"{path}.{property.Name}";
                }
            }
            else if (inner.GetType().Namespace == typeof(Job).Namespace && !inner.GetType().IsEnum)
            {
                foreach (var found in Nulls(inner, $"{path}.{property.Name}"))
                {
                    yield return found;
                }
            }
            else if (inner is IEnumerable list and not string)
            {
                var any = false;
                foreach (var item in list)
                {
                    any = true;
                    foreach (var found in item.GetType().Namespace == typeof(Job).Namespace ? Nulls(item, $"{path}.{property.Name}") : [])
                    {
                        yield return found;
                    }
                }

                if (!any)
                {
                    yield return $"{path}.{property.Name} (empty)";
                }
            }
        }
    }

    [Theory]
    [InlineData("gear-efficiency: 0 %", "machine.gear-efficiency: `0 %`; more than 0 % and at most 100 % would do")]
    [InlineData("gear-efficiency-back: 120 %", "machine.gear-efficiency-back: `120 %`; from 0 % to 100 % would do")]
    [InlineData("gear-ratio: 0", "machine.gear-ratio: `0`; a value above zero would do")]
    [InlineData("breakaway-torque: -8 N·m", "machine.breakaway-torque: `-8 N·m`; a value from zero up would do")]
    [InlineData("critical-speeds: 820 rpm", "machine.critical-speeds: `820 rpm`; a list would do, such as `critical-speeds: [{speed: 820 rpm, width: 60 rpm}]`, or `none`")]
    public void A_machine_that_is_not_built_gets_one_clear_line(string key, string says) =>
        FullJob.Problems(Small.Replace("{load: quadratic,", $"{{load: quadratic, {key},", StringComparison.Ordinal)).ShouldHaveSingleItem().ShouldContain(says);

    [Theory]
    [InlineData("none")]
    [InlineData("[]")]
    public void No_critical_speed_is_something_known(string none) =>
        Read(Small.Replace("{load: quadratic,", $"{{load: quadratic, critical-speeds: {none}, gear-efficiency-back: 0 %,", StringComparison.Ordinal)).Job.Machine.CriticalSpeeds.ShouldNotBeNull().ShouldBeEmpty();
}
