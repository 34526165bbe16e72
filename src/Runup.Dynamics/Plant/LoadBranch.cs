using System.Runtime.CompilerServices;

namespace Runup.Dynamics.Plant;

/// <summary>Torque of the driven machine, at the gear's motor side, while the shaft moves in one direction.</summary>
/// <remarks>
/// T(ω) = c₀ + c₁·ω + c₂·ω² (N·m, rad/s), plus, where the driven machine's curve is no such polynomial, its values at equal
/// steps of speed, linear between. The polynomial goes on beyond zero speed, so that an integrator meets no break at the moment it locates.
/// </remarks>
internal readonly struct LoadBranch
{
    private readonly double constantNm;
    private readonly double perSpeed;
    private readonly double perSquare;
    private readonly double[]? tableNm;
    private readonly double perStep;

    private LoadBranch(double constantNm, double perSpeed, double perSquare, double[]? tableNm = null, double perStep = 0)
    {
        this.constantNm = constantNm;
        this.perSpeed = perSpeed;
        this.perSquare = perSquare;
        this.tableNm = tableNm;
        this.perStep = perStep;
    }

    /// <summary>Branch through samples of a curve at equal steps of speed from (nearly) zero to a highest, negative for the backward direction.</summary>
    internal static LoadBranch Through(IReadOnlyList<double> samplesNm, double highestRadPerS)
    {
        var last = samplesNm.Count - 1;
        double t0 = samplesNm[0], t1 = samplesNm[last / 2], t2 = samplesNm[last];
        var half = 0.5 * highestRadPerS;
        var square = (t2 - (2 * t1) + t0) / (2 * half * half);
        var slope = ((t1 - t0) / half) - (square * half);
        var polynomial = new LoadBranch(t0, slope, square);
        var largest = samplesNm.Max(Math.Abs);
        for (var i = 0; i <= last; i++)
        {
            if (Math.Abs(polynomial.At(highestRadPerS * i / last) - samplesNm[i]) > 1e-6 * largest)
            {
                return new LoadBranch(0, 0, 0, [.. samplesNm], last / highestRadPerS);
            }
        }

        return polynomial;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double At(double speedRadPerS)
    {
        var torque = constantNm + (speedRadPerS * (perSpeed + (speedRadPerS * perSquare)));
        return tableNm is null ? torque : torque + FromTable(speedRadPerS);
    }

    private double FromTable(double speedRadPerS)
    {
        var table = tableNm!;
        var place = Math.Clamp(speedRadPerS * perStep, 0, table.Length - 1);
        var index = Math.Min((int)place, table.Length - 2);
        return table[index] + ((place - index) * (table[index + 1] - table[index]));
    }
}
