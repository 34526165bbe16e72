using System.Runtime.CompilerServices;

namespace Runup.Dynamics.Lanes;

/// <summary>Filling lanes, and what follows from the arithmetic of <see cref="ILanes{T}"/>.</summary>
internal static class LaneSet
{
    /// <summary>A figure of each member; where there are fewer members than lanes, the last stands in for the rest.</summary>
    internal static T From<T, TMember>(IReadOnlyList<TMember> members, Func<TMember, double> figure)
        where T : struct, ILanes<T>
    {
        Span<double> values = stackalloc double[T.Count];
        for (var lane = 0; lane < values.Length; lane++)
        {
            values[lane] = figure(members[Math.Min(lane, members.Count - 1)]);
        }

        return T.Load(values);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Clamp<T>(T value, T low, T high)
        where T : struct, ILanes<T> => T.Min(T.Max(value, low), high);

    /// <summary>A mask with every lane set.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Every<T>()
        where T : struct, ILanes<T> => T.Not(default);

    /// <summary>The same lanes, but for one.</summary>
    internal static T With<T>(this T lanes, int lane, double value)
        where T : struct, ILanes<T>
    {
        Span<double> values = stackalloc double[T.Count];
        lanes.Store(values);
        values[lane] = value;
        return T.Load(values);
    }

    /// <summary>A mask from a bit for each lane.</summary>
    internal static T Mask<T>(uint bits)
        where T : struct, ILanes<T>
    {
        if (bits == 0)
        {
            return default;
        }

        Span<double> values = stackalloc double[T.Count];
        for (var lane = 0; lane < values.Length; lane++)
        {
            values[lane] = BitConverter.Int64BitsToDouble((bits & (1u << lane)) != 0 ? -1 : 0);
        }

        return T.Load(values);
    }

    /// <summary>+1, −1 or 0.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Sign<T>(T value)
        where T : struct, ILanes<T> => T.Choose(T.Less(value, default), T.Of(-1), T.Choose(T.Less(default, value), T.Of(1), default));

    /// <summary>The largest of the lanes.</summary>
    internal static double Largest<T>(T lanes)
        where T : struct, ILanes<T>
    {
        Span<double> values = stackalloc double[T.Count];
        lanes.Store(values);
        var largest = values[0];
        foreach (var value in values)
        {
            largest = Math.Max(largest, value);
        }

        return largest;
    }

    /// <summary>Whether one lane of a mask is set.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static bool IsSet<T>(this T mask, int lane)
        where T : struct, ILanes<T> => BitConverter.DoubleToInt64Bits(mask[lane]) < 0;
}
