using Runup.Cli.Terminal;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Cli.DriveProfiles;

/// <summary>A profile for people: sizes, what the parameters mean, what the drive shows and how it is run, what is left open.</summary>
internal static class ProfilePage
{
    internal static void Write(Page page, DriveProfile profile, DriveSize size, bool all)
    {
        page.Heading(profile.Title);
        page.Line($"Family {profile.Family}, format version {profile.Format}, {profile.Parameters.Count} parameters. Factory values and ranges are those of size {size.Name}{(size.Region is { } region ? $" in region {region}" : "")}.");
        if (profile.Regions.Count > 0)
        {
            page.Line($"Regions with factory values of their own: {string.Join(", ", profile.Regions)}; a job names one under drive, `region`, else it is the first.");
        }

        Sizes(page, profile);
        Parameters(page, profile, size, all);
        Run(page, profile);
        var missing = Setting.All.Where(s => profile.Carrying(s).Count == 0).Select(s => s.Name).ToList();
        if (missing.Count > 0)
        {
            page.Heading("No parameter means");
            page.Line(string.Join(", ", missing) + ".");
        }
    }

    private static void Sizes(Page page, DriveProfile profile)
    {
        page.Heading("Sizes");
        var cycles = profile.Sizes.SelectMany(s => s.Rating.Overloads.Select(o => o.Name)).Distinct(StringComparer.Ordinal).ToList();
        page.Table(
            [new("size"), new("supply"), new("motor", Digits: true), new("", Digits: true), .. cycles.Select(c => new Column(c + " A", Digits: true)), new("DC bus", Digits: true), new("lowest resistor", Digits: true)],
            profile.Sizes.Select(s => (IReadOnlyList<string>)
            [
                s.Name,
                $"{s.Rating.SupplyVoltage.Low.Volts:0}-{s.Rating.SupplyVoltage.High.Volts:0} V, {s.Rating.SupplyPhases} ph",
                s.Rating.NominalPower.Write(UnitSystem.Metric, 3),
                s.Rating.NominalPower.Write(UnitSystem.UnitedStates, 3),
                .. cycles.Select(c => s.Rating.Overloads.FirstOrDefault(o => string.Equals(o.Name, c, StringComparison.Ordinal)) is { } o ? $"{o.Current.Amperes:0.##}" : ""),
                $"{s.Rating.BusCapacitance.Si * 1e6:0} µF",
                s.Rating.LowestBrakingResistance?.Write(UnitSystem.Metric) ?? "no chopper",
            ]));
    }

    private static void Parameters(Page page, DriveProfile profile, DriveSize size, bool all)
    {
        var held = ParameterValues.Defaults(profile, size);
        foreach (var group in profile.Parameters.Where(p => all || p.Meaning is not null || p.Perhaps.Count > 0).GroupBy(p => p.Group, StringComparer.Ordinal))
        {
            page.Heading(group.Key);
            page.Table(
                [new("no."), new("name"), new("means", Whole: false), new("values", Whole: false), new("factory", Digits: true), new("register", Digits: true), new("written")],
                group.Select(p => (IReadOnlyList<string>)
                [
                    p.Number,
                    p.Name,
                    ParameterWords.Meaning(p),
                    ParameterWords.Values(profile, p, size, held),
                    DisplayText.Of(p, held[p.Number]!.Value, held),
                    $"{p.Register}{(p.Width == 32 ? "-" + (p.Register + 1) : "")}",
                    ParameterWords.Access(p.Access),
                ]));
        }
    }

    private static void Run(Page page, DriveProfile profile)
    {
        page.Heading("Over the bus");
        page.Line(profile.Command is { } command
            ? $"Command word {command.Word}, reference {command.Reference}, status word {command.Status}, after IEC 61800-7-201."
            : "The profile names no command word: it can't be run over the bus, and nothing is written to it there.");
        page.Line(profile.Readings.Count == 0
            ? "No readings are named: they have to be read at the panel."
            : "Readings: " + string.Join(", ", profile.Readings.Select(r => $"{r.Kind.Name()} {r.Parameter.Number}")) + ".");
        page.Line(profile.Store is { } store
            ? $"Values are kept through power-off once {store.Write} is written to {store.Parameter}."
            : "No store procedure is named: it is taken that each value is kept at once.");
        page.Line($"{profile.Trips.Codes.Count} trip codes with their causes.");
    }
}
