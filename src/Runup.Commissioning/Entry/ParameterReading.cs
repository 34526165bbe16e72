using Runup.Profiles;

namespace Runup.Commissioning.Entry;

/// <summary>Reading that asks a second time before the link is taken for lost.</summary>
internal static class ParameterReading
{
    /// <summary>The value of one parameter; null in the answer where the drive does not give it.</summary>
    public static async Task<LinkReply<long?>> ReadOne(this IDriveLink link, Parameter parameter, CancellationToken cancellation) =>
        await link.ReadAgain([parameter], cancellation) switch
        {
            LinkReply<IReadOnlyDictionary<string, long>>.Answered answered =>
                new LinkReply<long?>.Answered(answered.Value.TryGetValue(parameter.Number, out var raw) ? raw : null),
            LinkReply<IReadOnlyDictionary<string, long>>.Refused refused => new LinkReply<long?>.Refused(refused.Why),
            LinkReply<IReadOnlyDictionary<string, long>>.Unanswered lost => new LinkReply<long?>.Unanswered(lost.Why),
            _ => throw new InvalidOperationException("The set of replies is closed."),
        };

    /// <summary>The values of all these parameters by number, null where the drive does not give one; or why the link is lost.</summary>
    public static async Task<(IReadOnlyDictionary<string, long?>? Values, string? Lost)> ReadAll(
        this IDriveLink link, IReadOnlyList<Parameter> parameters, CancellationToken cancellation) =>
        await link.ReadAgain(parameters, cancellation) switch
        {
            LinkReply<IReadOnlyDictionary<string, long>>.Answered answered => (Known(parameters, answered.Value), null),
            LinkReply<IReadOnlyDictionary<string, long>>.Refused => (Known(parameters, new Dictionary<string, long>(StringComparer.Ordinal)), null),
            LinkReply<IReadOnlyDictionary<string, long>>.Unanswered lost => (null, lost.Why),
            _ => throw new InvalidOperationException("The set of replies is closed."),
        };

    /// <summary>
    /// All that a drive keeps; or why there is nothing to keep. A drive that gives none of it is not the one that the job names,
    /// or not ready: a record of nothing must not stand for how it was found.
    /// </summary>
    public static async Task<(IReadOnlyDictionary<string, long?>? Values, string? Lost)> ReadKept(
        this IDriveLink link, IReadOnlyList<Parameter> kept, CancellationToken cancellation)
    {
        var (values, lost) = await link.ReadAll(kept, cancellation);
        return values is { Count: > 0 } && values.Values.All(v => v is null)
            ? (null, $"{link.Description} gives none of the drive's parameters; is it the drive that the job names, and the right unit?")
            : (values, lost);
    }

    private static async Task<LinkReply<IReadOnlyDictionary<string, long>>> ReadAgain(
        this IDriveLink link, IReadOnlyList<Parameter> parameters, CancellationToken cancellation)
    {
        var first = await link.Read(parameters, cancellation);
        return first is LinkReply<IReadOnlyDictionary<string, long>>.Unanswered ? await link.Read(parameters, cancellation) : first;
    }

    private static Dictionary<string, long?> Known(IReadOnlyList<Parameter> parameters, IReadOnlyDictionary<string, long> read) =>
        parameters.ToDictionary(p => p.Number, p => read.TryGetValue(p.Number, out var raw) ? (long?)raw : null, StringComparer.Ordinal);
}
