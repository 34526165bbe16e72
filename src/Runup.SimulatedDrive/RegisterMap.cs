using Runup.Profiles;

namespace Runup.SimulatedDrive;

/// <summary>Which parameter answers at which register.</summary>
internal sealed class RegisterMap
{
    private readonly Dictionary<ushort, Parameter> byFirst;

    internal RegisterMap(DriveProfile profile) => byFirst = profile.Parameters.ToDictionary(p => p.Register);

    /// <summary>The parameters of a run of registers in order, or null where one is missing or would be cut.</summary>
    internal List<Parameter>? Within(int first, int count)
    {
        var parameters = new List<Parameter>();
        var end = first + count;
        for (var at = first; at < end;)
        {
            if (at > ushort.MaxValue || !byFirst.TryGetValue((ushort)at, out var parameter) || at + parameter.RegisterCount > end)
            {
                return null;
            }

            parameters.Add(parameter);
            at += parameter.RegisterCount;
        }

        return parameters;
    }
}
