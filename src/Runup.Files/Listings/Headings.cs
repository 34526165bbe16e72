using System.Text;

namespace Runup.Files.Listings;

/// <summary>The headings that manuals print above their columns.</summary>
internal static class Headings
{
    // The first that a heading holds decides; a longer one stands before a shorter one that it holds.
    private static readonly (ColumnRole Role, double Worth, string[] Texts)[] Known =
    [
        (ColumnRole.WhileRunning, 1, ["change while running", "while running", "change in run", "run time change", "changeable in run", "during operation", "run edit", "edit in run", "change during run", "set in run", "write during run", "write in run", "in run", "run change", "online change", "running change", "adjustable running", "chg", "changes in operation", "locked in run", "locked while running", "stop to change", "stop needed", "stop required", "only at standstill", "at standstill only", "only when stopped", "change in operation", "running", "run", "in operation", "while run", "modify", "modifiable", "modification", "changeable while running"]),
        (ColumnRole.Register, 1, ["modbus", "register", "bus address", "holding", "comm address", "communication address", "serial address", "pdu address", "reg", "reg no", "bus adr", "network address", "comms address", "address", "addr", "adr", "mb"]),
        (ColumnRole.Sub, 1, ["sub index", "subindex", "sub", "sub idx", "s ix", "si", "subidx"]),
        (ColumnRole.Default, 1, ["factory setting", "factory value", "factory", "default", "default value", "initial value", "initial", "preset", "ex works", "works setting", "works", "works value", "ex factory", "as shipped", "at delivery", "fact", "def", "dflt", "initial setting", "delivery", "standard setting", "as delivered", "delivery value", "delivered", "shipped", "from works", "std", "out of the box", "start value"]),
        (ColumnRole.Scale, 1, ["scale", "scaling", "resolution", "step", "increment", "factor", "min unit", "minimum unit", "smallest step", "setting unit", "multiplier", "res", "granularity", "one count", "count", "lsb", "counts per unit", "steps", "digit", "weight", "fine", "incr"]),
        (ColumnRole.Low, 1, ["min", "minimum", "low", "lowest", "low limit", "lower limit", "from", "lower", "min value", "lo"]),
        (ColumnRole.High, 1, ["max", "maximum", "high", "highest", "high limit", "upper limit", "to", "upper", "max value", "hi"]),
        (ColumnRole.Type, 1, ["data type", "type", "size", "width", "format", "bits", "words", "datatype", "word length", "dtype", "len", "length"]),
        (ColumnRole.Access, 1, ["access", "r w", "rw", "read write", "attr", "attribute", "attributes", "acc", "write", "change", "property", "changeable", "set when", "when", "may be set", "edit", "properties", "settable", "when to change", "rights"]),
        (ColumnRole.Choices, 1, ["options", "option", "choices", "selection", "selections", "choice", "enumeration", "possible settings", "list", "codes", "enum"]),
        (ColumnRole.Range, 1, ["setting range", "range", "values", "adjustment range", "limits", "value range", "settings", "set range", "permitted values", "range options", "range choices", "adjustable from", "span", "settable range", "possible values", "allowed", "allowed values", "admissible", "range of adjustment", "range values", "value", "setting"]),
        (ColumnRole.Unit, 1, ["unit", "units", "dim", "dimension", "uom", "eng unit", "measure", "units of measure"]),
        (ColumnRole.Group, 1, ["group", "menu", "function group", "section", "parameter group", "block", "category", "folder", "chapter", "family"]),
        (ColumnRole.Name, 1, ["name", "parameter name", "designation", "title", "function name", "denomination", "label", "display text", "parameter designation", "text", "caption", "item", "term", "full name", "legend"]),
        (ColumnRole.Remark, 0.9, ["description", "remark", "remarks", "note", "notes", "comment", "comments", "explanation", "details", "meaning", "purpose", "what it does", "content", "contents", "hint", "hints", "description and range", "effect"]),
        (ColumnRole.Number, 1, ["no", "number", "parameter no", "par no", "param no", "parameter number", "nr", "id", "index", "code", "par", "object", "idx", "function code", "#", "p no", "prm", "pno", "item no", "obj", "ref", "pos", "param id", "ident", "num"]),
        (ColumnRole.Name, 0.8, ["function", "parameter", "param", "parameters", "functions"]),
    ];

    /// <summary>What a heading says of its column, and how surely; null where it says nothing known.</summary>
    internal static (ColumnRole Role, double Worth)? Read(string text)
    {
        var plain = Plain(text);
        if (plain.Length is 0 or > 60)
        {
            return text.Trim() == "#" ? (ColumnRole.Number, 1) : null;
        }

        (ColumnRole Role, double Worth)? best = null;
        foreach (var (role, worth, texts) in Known)
        {
            foreach (var known in texts)
            {
                var here = plain == known ? worth : ($" {plain} ".Contains($" {known} ", StringComparison.Ordinal) ? worth * (0.45 + (0.5 * known.Length / plain.Length)) : 0);
                if (here > (best?.Worth ?? 0.4))
                {
                    best = (role, here);
                }
            }
        }

        return best;
    }

    private static string Plain(string text)
    {
        var plain = new StringBuilder();
        var withoutBrackets = Patterns.Bracketed().Replace(NumberCell.Clean(text), " ");
        foreach (var c in withoutBrackets.Length > 0 && withoutBrackets.Trim().Length > 0 ? withoutBrackets : text)
        {
            plain.Append(char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' ');
        }

        return string.Join(' ', plain.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
