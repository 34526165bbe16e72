using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>When a parameter may be written, as tables mark it.</summary>
internal static class AccessCell
{
    private static readonly string[] Yes = ["yes", "y", "✓", "✔", "○", "o", "●", "x", "•", "run", "running"];
    private static readonly string[] No = ["no", "n", "×", "✗", "✘", "–", "-", "stop", "stopped"];

    internal static ParameterAccess? Read(string text, bool whileRunning)
    {
        var plain = NumberCell.Clean(text).ToLowerInvariant().Trim('.', ' ');
        if (plain.Length == 0)
        {
            return null;
        }

        if (whileRunning && (Yes.Contains(plain, StringComparer.Ordinal) || No.Contains(plain, StringComparer.Ordinal)))
        {
            return Yes.Contains(plain, StringComparer.Ordinal) ? ParameterAccess.AnyTime : ParameterAccess.StoppedOnly;
        }

        var flat = plain.Replace("/", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);
        if (flat is "r" or "ro" or "const" or "read" || Has(flat, "readonly", "monitor", "display", "reading", "actualvalue", "indication"))
        {
            return ParameterAccess.ReadOnly;
        }

        if (flat is "w" or "wo" || Has(flat, "writeonly", "action", "once"))
        {
            return ParameterAccess.Action;
        }

        if (Has(flat, "anytime", "always", "running", "whilerun", "online", "inrun", "duringoperation", "inoperation"))
        {
            return Has(flat, "not", "no") ? ParameterAccess.StoppedOnly : ParameterAccess.AnyTime;
        }

        return Has(flat, "stop", "standstill", "halt", "offline", "ready") || flat is "rw" or "rws" or "rwr" or "rww" or "readwrite" or "w/s" or "s" ? ParameterAccess.StoppedOnly : flat is "a" ? ParameterAccess.AnyTime : null;
    }

    private static bool Has(string text, params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (text.Contains(word, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
