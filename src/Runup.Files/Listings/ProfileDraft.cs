using System.Globalization;
using System.Text;
using Runup.Files.Profiles;
using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Files.Listings;

/// <summary>Writes an imported table as the draft of a drive profile: rows complete as far as the table tells, the rest asked for in comments.</summary>
/// <param name="scorer">Who suggested the meanings, and knows what each choice stands for.</param>
/// <param name="confirmed">Numbers whose suggested meaning a person has confirmed; all others stay under <c>perhaps</c>, for which nothing is ever entered.</param>
public sealed class ProfileDraft(MeaningScorer scorer, IReadOnlySet<string> confirmed)
{
    /// <summary>The draft's text.</summary>
    /// <param name="family">The family's name in job files.</param>
    /// <param name="from">What it was imported from, for the reader.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="suggestions">For each row what it may mean.</param>
    public string Write(string family, string from, IReadOnlyList<ListedParameter> rows, IReadOnlyList<Suggestion> suggestions)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $$$"""
            # Draft of a drive profile, imported from {{{Plain(from)}}}. To make a profile of it:
            #  1. Compare each `perhaps` with the manual and call it `means` where it is right; the figure behind is how certain the guess is.
            #     Nothing is entered for a `perhaps`. Take it out where it is wrong.
            #  2. Complete the rows that end in `to complete`. Where the table tells no scale, it is taken from the decimals that are printed:
            #     compare some of each kind with the drive's list of registers before anything is written over a bus.
            #  3. Fill in the ratings and sizes below, from the manual's pages of technical data.
            #  4. runup profile lint {{{family}}}{{{ProfileReader.Extension}}}
            # docs/formats/drive-profile.md explains every key.
            drive-profile: {{{ProfileReader.Format}}}
            family: {{{YamlWriting.Scalar(family, inFlow: false)}}}

            # ratings:
            #   "400":
            #     supply: {lowest: 380 V, highest: 480 V, phases: 3}
            #     overload-cycles: {normal: {overload: 110 %, for: 60 s, every: 600 s}}
            #     peak: {overload: 150 %, of: normal, for: 2 s}
            #     overcurrent-trip: {overload: 200 %, of: normal}
            #     overvoltage-trip: 820 V
            #     overvoltage-control: 780 V
            #     chopper: 760 V
            #     undervoltage-trip: 380 V
            #     switching-derating: {4 kHz: 100 %}
            #     ambient-derating: {full-up-to: 40 °C, loss: 1.5 %, per: 1 K, highest: 50 °C}
            #     altitude-derating: {full-up-to: 1000 m, loss: 1 %, per: 100 m, highest: 4000 m}
            # sizes:
            #   - {size: the make's name of it, rating: "400", power: 4 kW, currents: {normal: 9.5 A}, bus: 320 µF, lowest-resistor: 60 ohm}
            # command: {word: ..., reference: ..., status: ...}    # where the drive follows IEC 61800-7-201
            # readings: {output-frequency: ..., output-current: ..., dc-bus-voltage: ...}

            groups:

            """);
        var advisor = new ConversionAdvisor(rows, suggestions);
        string? group = null;
        for (var i = 0; i < rows.Count; i++)
        {
            var heading = rows[i].Group.Length > 0 ? rows[i].Group : "Parameters";
            if (!string.Equals(group, heading, StringComparison.Ordinal))
            {
                group = heading;
                text.Append(CultureInfo.InvariantCulture, $"  - group: {YamlWriting.Scalar(heading, inFlow: false)}\n    parameters:\n");
            }

            text.Append("      - ").Append(Row(rows[i], suggestions[i], advisor.Of(i))).Append('\n');
        }

        return text.ToString().ReplaceLineEndings("\n");
    }

    private string Row(ListedParameter row, Suggestion suggestion, ConversionAdvice advice)
    {
        var keys = new List<string> { Key("number", row.Number) };
        var missing = new List<string>();
        if (row.Register is { } register)
        {
            keys.Add(Key("register", register.ToString(CultureInfo.InvariantCulture)));
        }
        else if (!ushort.TryParse(row.Number, NumberStyles.None, CultureInfo.InvariantCulture, out _))
        {
            missing.Add("register");
        }

        keys.Add(Key("name", row.Name.Length > 0 ? row.Name : "?"));
        Add(keys, "width", row.Width is 32 ? "32" : null);
        Add(keys, "signed", row.Signed is true ? "yes" : null);
        var guessedReading = row.Access is null && suggestion.IsReading;
        row = guessedReading ? row with { Access = ParameterAccess.ReadOnly } : row;
        var setting = row.Access is ParameterAccess.ReadOnly ? null : suggestion.Setting;
        Values(keys, missing, row, setting);
        Add(keys, "access", row.Access is { } access and not ParameterAccess.StoppedOnly ? ParameterReader.WordOf(access) : null);
        Meaning(keys, row, setting, advice);
        var remark = guessedReading ? "  # taken for a reading: it has no factory value" : setting is null ? "" : $"  # {suggestion.Certainty.ToString("0.00", CultureInfo.InvariantCulture)} {Plain(suggestion.Reason)}{Remark(advice)}";
        return "{" + string.Join(", ", keys) + "}" + remark + (missing.Count > 0 ? $"{(remark.Length > 0 ? ";" : "  #")} to complete: {string.Join(", ", missing)}" : "");
    }

    private void Values(List<string> keys, List<string> missing, ListedParameter row, Setting? setting)
    {
        var stands = setting is null ? null : scorer.Counterparts(row, setting);
        if (row.IsChosen)
        {
            keys.Add("choices: {" + string.Join(", ", row.Choices.Select((c, i) => Choice(c, stands?[i], setting))) + "}");
        }
        else
        {
            Add(keys, "unit", row.Unit.Length > 0 ? row.Unit : null);
            keys.Add(Key("scale", Figure(row.Scale ?? 1)));
            var whole = row.Access is ParameterAccess.ReadOnly or ParameterAccess.Command;
            Needed(keys, missing, "low", row.Low ?? (whole ? 0 : null));
            Needed(keys, missing, "high", row.High ?? (whole ? ushort.MaxValue * (row.Scale ?? 1) : null));
            if (row.Choices.Count > 0)
            {
                keys.Add("special: {" + string.Join(", ", row.Choices.Select(c => $"{c.Raw}: {{label: {YamlWriting.Scalar(Label(c), inFlow: true)}, is: no-counterpart}}")) + "}");
            }
        }

        Needed(keys, missing, "default", row.Default ?? (row.Access is ParameterAccess.ReadOnly ? row.Low ?? 0 : null));
    }

    private static string Choice(NamedValue choice, string? stands, Setting? setting)
    {
        var label = YamlWriting.Scalar(Label(choice), inFlow: true);
        return setting?.Form is SettingForm.OneOf
            ? $"{choice.Raw}: {{label: {label}, is: {YamlWriting.Scalar(stands ?? "no-counterpart", inFlow: true)}}}"
            : $"{choice.Raw}: {label}";
    }

    private void Meaning(List<string> keys, ListedParameter row, Setting? setting, ConversionAdvice advice)
    {
        if (setting is null)
        {
            return;
        }

        keys.Add(Key(confirmed.Contains(row.Number) ? "means" : "perhaps", setting.Name));
        if (advice is ConversionAdvice.Declared declared)
        {
            keys.Add(declared.Key is "at-no-slip" || declared.Value[0] is '{' ? $"{declared.Key}: {declared.Value}" : Key(declared.Key, declared.Value));
        }
    }

    private static string Remark(ConversionAdvice advice) => advice switch
    {
        ConversionAdvice.Declared { IsSaid: true } => "",
        ConversionAdvice.Declared usual => $"; {usual.Key}: {Plain(usual.Because)}",
        ConversionAdvice.Asked asked => $"; to ask: {Plain(asked.Question)}",
        _ => "",
    };

    private static void Needed(List<string> keys, List<string> missing, string key, decimal? value)
    {
        if (value is { } known)
        {
            keys.Add(Key(key, Figure(known)));
        }
        else
        {
            missing.Add(key);
        }
    }

    private static void Add(List<string> keys, string key, string? value)
    {
        if (value is not null)
        {
            keys.Add(Key(key, value));
        }
    }

    private static string Key(string key, string value) => $"{key}: {YamlWriting.Scalar(Plain(value), inFlow: true)}";

    private static string Label(NamedValue choice) => choice.Label.Length > 0 ? Plain(choice.Label) : choice.Raw.ToString(CultureInfo.InvariantCulture);

    private static string Figure(decimal value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Plain(string text) => string.Join(' ', Quote.OneLine(text.Replace('\n', ' ').Replace('\t', ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
