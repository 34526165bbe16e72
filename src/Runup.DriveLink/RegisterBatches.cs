using Runup.Modbus;
using Runup.Profiles;

namespace Runup.DriveLink;

/// <summary>A run of registers read in one request, and the parameters wanted of it.</summary>
/// <param name="Range">The registers.</param>
/// <param name="Wanted">The parameters, whole within the range.</param>
internal sealed record RegisterBatch(RegisterRange Range, IReadOnlyList<Parameter> Wanted);

/// <summary>Parameters gathered into as few requests as the protocol allows.</summary>
internal static class RegisterBatches
{
    // Bridging a gap costs two bytes a register; a request costs a round trip.
    private const int WidestGap = 16;

    /// <summary>
    /// The batches in order of addresses. A gap is bridged only where the profile has a readable parameter at each of its registers,
    /// since a drive refuses a request that touches a register which it does not have.
    /// </summary>
    public static IReadOnlyList<RegisterBatch> Of(IEnumerable<Parameter> wanted, DriveProfile profile)
    {
        var readable = profile.Parameters.Where(p => p.Access != ParameterAccess.Action).SelectMany(Registers).ToHashSet();
        var batches = new List<RegisterBatch>();
        List<Parameter> now = [];
        foreach (var parameter in wanted.DistinctBy(p => p.Register).OrderBy(p => p.Register))
        {
            if (now.Count > 0 && !Joins(now, parameter, readable))
            {
                batches.Add(Batch(now));
                now = [];
            }

            now.Add(parameter);
        }

        if (now.Count > 0)
        {
            batches.Add(Batch(now));
        }

        return batches;
    }

    private static bool Joins(List<Parameter> now, Parameter next, HashSet<int> readable)
    {
        var end = now[^1].Register + now[^1].RegisterCount;
        return next.Register >= end && next.Register - end <= WidestGap
            && next.Register + next.RegisterCount - now[0].Register <= ModbusLimits.ReadCount
            && Enumerable.Range(end, next.Register - end).All(readable.Contains);
    }

    private static RegisterBatch Batch(List<Parameter> parameters) =>
        new(new RegisterRange(parameters[0].Register, parameters[^1].Register + parameters[^1].RegisterCount - parameters[0].Register), parameters);

    private static IEnumerable<int> Registers(Parameter parameter) => Enumerable.Range(parameter.Register, parameter.RegisterCount);
}
