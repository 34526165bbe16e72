using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Plant;

/// <summary>Torque of the driven machine, at the gear's motor side, while the shaft moves in one direction.</summary>
/// <remarks>
/// T(ω) = c₀ + c₁·ω + c₂·ω² (N·m, rad/s), plus, where the driven machine's curve is no such polynomial, its values at equal
/// steps of speed, linear between. The polynomial goes on beyond zero speed, so that an integrator meets no break at the moment it locates.
/// </remarks>
internal sealed class LoadBranch
{
    private readonly double[]? tableNm;
    private readonly double perStep;

    private LoadBranch(double constantNm, double perSpeed, double perSquare, double[]? tableNm = null, double perStep = 0)
    {
        ConstantNm = constantNm;
        PerSpeed = perSpeed;
        PerSquare = perSquare;
        this.tableNm = tableNm;
        this.perStep = perStep;
    }

    internal double ConstantNm { get; }

    internal double PerSpeed { get; }

    internal double PerSquare { get; }

    /// <summary>The curve is no polynomial.</summary>
    internal bool IsTable => tableNm is not null;

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

    internal double At(double speedRadPerS)
    {
        var (constant, slope) = IsTable ? PieceAt(speedRadPerS) : (ConstantNm, PerSpeed);
        return Polynomial<One>(constant, slope, PerSquare, speedRadPerS);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Polynomial<T>(T constantNm, T perSpeed, T perSquare, T speedRadPerS)
        where T : struct, ILanes<T> => T.MultiplyAdd(speedRadPerS, T.MultiplyAdd(speedRadPerS, perSquare, perSpeed), constantNm);

    /// <summary>The straight piece of the table at a speed: its torque at zero speed, and what each rad/s adds.</summary>
    internal (double ConstantNm, double PerSpeed) PieceAt(double speedRadPerS)
    {
        var table = tableNm!;
        var place = speedRadPerS * perStep;
        if (!(place < table.Length - 1))
        {
            return (table[^1], 0);
        }

        var index = Math.Max((int)place, 0);
        var rise = table[index + 1] - table[index];
        return place < 0 ? (table[0], 0) : (table[index] - (index * rise), rise * perStep);
    }
}
