using System.Text.Json.Nodes;
using Runup.Commissioning.Survey;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>A surveyed value: plain, or with where it comes from.</summary>
/// <typeparam name="T">What was surveyed.</typeparam>
/// <param name="name">The key.</param>
/// <param name="example">A value as a person would write it.</param>
/// <param name="about">What it is.</param>
/// <param name="form">How the value is read.</param>
/// <param name="need">Whether it must be there.</param>
internal sealed class DatumKey<T>(string name, string example, string about, Form<T> form, Need need) : Key<Datum<T>>(name, about, need)
{
    internal override string Example { get; } = example;

    internal override string Wanted => form.Wanted;

    internal override IReadOnlyList<string> Words => form.Words;

    internal override bool IsDatum => true;

    internal override object? Read(YamlNode node, Desk desk)
    {
        var origin = Provenances.Plain;
        if (node is YamlMap map)
        {
            if (Provenances.Read(map, form.Wanted, desk) is not ({ } value, var stated))
            {
                return null;
            }

            (node, origin) = (value, stated);
        }

        if (node is not YamlScalar { IsEmpty: false } scalar)
        {
            var orElse = node is YamlScalar && Need is not Need.Always ? ", or leave the key out" : "";
            desk.Problems.Add(node, node.Described, WouldDo + orElse);
            return null;
        }

        return form.Read(scalar, desk, out var read, out var rounding) && origin is not null
            ? new Datum<T>(read, origin.From, origin.Error, origin.Note, scalar.Text.Trim(), rounding, origin.Photo)
            : null;
    }

    internal override JsonObject Schema()
    {
        var schema = new JsonObject { ["description"] = About };
        if (form.Definition is { } name)
        {
            schema["$ref"] = "#/$defs/" + Provenances.DefinitionName(name);
        }
        else
        {
            schema["anyOf"] = Provenances.Either(form.Schema());
        }

        return schema;
    }
}
