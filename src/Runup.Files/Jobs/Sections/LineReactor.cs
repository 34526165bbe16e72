using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>A line reactor as people state it.</summary>
internal abstract record LineReactor
{
    private LineReactor()
    {
    }

    /// <summary>As a part of the drive's base impedance.</summary>
    /// <param name="Fraction">The part.</param>
    internal sealed record Part(Fraction Fraction) : LineReactor;

    /// <summary>As an inductance.</summary>
    /// <param name="Inductance">The inductance of one phase.</param>
    internal sealed record Coil(Inductance Inductance) : LineReactor;
}

/// <summary>Reads a line reactor: a number with % is a part, any other unit is of inductance.</summary>
internal sealed class LineReactorForm : Form<LineReactor>
{
    internal override string Wanted => "per cent or an inductance";

    internal override bool Read(YamlScalar scalar, Desk desk, [MaybeNullWhen(false)] out LineReactor value, out double roundingSi)
    {
        value = null;
        if (QuantityText.ReadSi(Dimension.Inductance, scalar.Text) is Reading<double>.Value)
        {
            if (QuantityWords.Read(scalar, Dimension.Inductance, Bound.AboveZero, desk, out var henries, out roundingSi))
            {
                value = new LineReactor.Coil(Inductance.FromSi(henries));
            }

            return value is not null;
        }

        if (!QuantityWords.Read(scalar, Dimension.Fraction, Bound.Any, desk, out var ratio, out roundingSi))
        {
            return false;
        }

        if (ratio < 0)
        {
            desk.Problems.Add(scalar, Quote.Of(scalar.Text), "0 % or more would do");
            return false;
        }

        value = new LineReactor.Part(Fraction.FromRatio(ratio));
        return true;
    }

    internal override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(QuantityWords.Schema(Dimension.Fraction), QuantityWords.Schema(Dimension.Inductance)) };
}

/// <summary>Keeps a datum's origin while its value becomes another.</summary>
internal static class DatumAs
{
    internal static Datum<T> As<T>(this Datum<LineReactor> datum, T value) =>
        new(value, datum.From, datum.Error, datum.Note, datum.AsWritten, datum.RoundingSi);
}
