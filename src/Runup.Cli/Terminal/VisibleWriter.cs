using System.Text;

namespace Runup.Cli.Terminal;

/// <summary>Standard error, on which nothing but text and line ends arrives.</summary>
/// <param name="inner">Where it goes.</param>
internal sealed class VisibleWriter(TextWriter inner) : TextWriter
{
    public override Encoding Encoding => inner.Encoding;

    // Windows ends its lines with a carriage return, which this writer itself puts there.
    public override void Write(char value) => inner.Write(value != '\r' && Visible.IsHidden(value) ? '�' : value);

    public override void Write(string? value)
    {
        foreach (var c in value ?? "")
        {
            Write(c);
        }
    }

    public override void Flush() => inner.Flush();
}
