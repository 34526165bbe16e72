namespace Runup.Commissioning.Handover;

/// <summary>Names of choices as job files spell them.</summary>
internal static class EnumWords
{
    /// <summary>Of <c>ConstantPower</c> <c>constant-power</c>.</summary>
    public static string Words<T>(this T choice)
        where T : struct, Enum => string.Concat(choice.ToString().Select((c, i) => char.IsUpper(c) && i > 0 ? $"-{char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c).ToString()));
}
