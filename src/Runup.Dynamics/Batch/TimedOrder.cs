namespace Runup.Dynamics;

/// <summary>An order at a time, the same for every member of a batch.</summary>
/// <param name="AtS">When it is given, in s since the beginning.</param>
/// <param name="Order">What the drive is told.</param>
public readonly record struct TimedOrder(double AtS, DriveOrder Order);
