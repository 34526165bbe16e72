namespace Runup.Dynamics;

/// <summary>Something that happened in a run.</summary>
/// <param name="TimeS">When, in s.</param>
/// <param name="What">What.</param>
public readonly record struct TraceEvent(double TimeS, TraceEventKind What);

/// <summary>What can happen in a run; the list is closed, others rely on its names.</summary>
public enum TraceEventKind
{
    /// <summary>The output came on after a run order.</summary>
    Start,

    /// <summary>The motor runs at the frequency asked for.</summary>
    AtSpeed,

    /// <summary>The current limit began to hold.</summary>
    CurrentLimit,

    /// <summary>Overvoltage control began to stretch the deceleration.</summary>
    OvervoltageControl,

    /// <summary>The braking chopper began to switch.</summary>
    ChopperOn,

    /// <summary>The run order went off.</summary>
    Stop,

    /// <summary>The shaft came to rest.</summary>
    Standstill,

    /// <summary>The drive tripped.</summary>
    Trip,

    /// <summary>The bus time-out acted.</summary>
    BusLost,

    /// <summary>The load's energy began to keep the DC bus up.</summary>
    RideThrough,

    /// <summary>The supply went.</summary>
    SupplyLost,

    /// <summary>The supply came back.</summary>
    SupplyBack,
}

/// <summary>The names of events in files and JSON.</summary>
public static class TraceEventNames
{
    private static readonly string[] Names =
        ["start", "at-speed", "current-limit", "overvoltage-control", "chopper-on", "stop", "standstill", "trip", "bus-lost", "ride-through", "supply-lost", "supply-back"];

    /// <summary>The event's name, such as <c>at-speed</c>.</summary>
    public static string Name(this TraceEventKind kind) => Names[(int)kind];
}
