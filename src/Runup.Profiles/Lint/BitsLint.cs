namespace Runup.Profiles;

/// <summary>Bits of a value that choose settings: each bit once, within the value, and only what they can hold.</summary>
internal static class BitsLint
{
    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        foreach (var parameter in profile.Parameters)
        {
            if (parameter is not { Meaning: Meaning.Bits bits, Form: ParameterForm.Numeric form })
            {
                continue;
            }

            var taken = 0L;
            foreach (var field in bits.Fields)
            {
                if ((field.Mask & taken) != 0)
                {
                    yield return ProfileLint.Error(parameter, "bits", $"{field} for `{field.Setting.Name}` {(field.First == field.Last ? "is" : "are")} taken by another setting, too", "each bit once");
                }

                taken |= field.Mask;
                foreach (var value in field.Says.Keys.Where(v => v < 0 || v > field.Most))
                {
                    yield return ProfileLint.Error(parameter, "bits", $"{field} can't hold {value}", $"from 0 to {field.Most}");
                }
            }

            if (form.Low != 0 || form.Step != 1 || form.Scale != DisplayScale.Of(1) || form.Specials.Count > 0 || taken > form.High)
            {
                yield return ProfileLint.Error(parameter, "bits", "a value of bits counts from 0 in ones, and its `high` has room for all of them", "`scale: 1`, `low: 0`, no `step`, no `special`, and as `high` all bits set");
            }
            else if ((form.High & (form.High + 1)) != 0)
            {
                yield return ProfileLint.Error(parameter, "high", $"{form.High} is not all bits set", "one less than a power of two, such as 255");
            }
        }
    }
}
