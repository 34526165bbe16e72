namespace Runup.Profiles;

/// <summary>No register may belong to two parameters.</summary>
internal static class RegisterLint
{
    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        Parameter? before = null;
        foreach (var parameter in profile.Parameters.OrderBy(p => (int)p.Register))
        {
            if (before is not null && parameter.Register < before.Register + before.RegisterCount)
            {
                yield return ProfileLint.Error(parameter, "register", $"register {parameter.Register} belongs to parameter `{before.Number}`, too", "check `register` and `width` of both");
            }

            if (parameter.Register + parameter.RegisterCount - 1 > ushort.MaxValue)
            {
                yield return ProfileLint.Error(parameter, "register", "its second register lies beyond the last address", "check `register` and `width`");
            }

            before = before is not null && before.Register + before.RegisterCount > parameter.Register + parameter.RegisterCount ? before : parameter;
        }
    }
}
