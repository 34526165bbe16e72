using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Entry;

/// <summary>One write with its two entries in the record, around it, and its read-back.</summary>
/// <remarks>
/// Once begun it is not cancelled, so that the record tells how it ended. Where the reply was lost and the drive holds what it held
/// before, the same value is written once more: that changes nothing, should the first still arrive.
/// </remarks>
internal sealed class ProvenWrite(string tag, IDriveLink link, IRecords records)
{
    /// <summary>How a write ended.</summary>
    /// <param name="Outcome">As the read-back tells it.</param>
    /// <param name="ReadBack">What the drive holds; null where it is not known.</param>
    /// <param name="LinkLost">Why the link is taken for lost, or null.</param>
    internal sealed record Result(WriteOutcome Outcome, long? ReadBack, string? LinkLost);

    public async Task<Result> Of(Parameter parameter, long? before, long raw)
    {
        await records.Append(tag, new RecordBody.WriteIntended(parameter.Number, before, raw), CancellationToken.None);
        var result = await Once(parameter, raw);
        if (result.Reply is LinkReply<Written>.Unanswered && result.Proof is { LinkLost: null, ReadBack: { } held } && held == before && held != raw)
        {
            result = await Once(parameter, raw);
        }

        var proof = result.Proof;
        await records.Append(tag, new RecordBody.WriteEnded(parameter.Number, proof.Outcome.Name, proof.ReadBack, proof.Outcome.Why), CancellationToken.None);
        return proof;
    }

    private async Task<(LinkReply<Written> Reply, Result Proof)> Once(Parameter parameter, long raw)
    {
        var reply = await link.Write(parameter, raw, CancellationToken.None);
        var readBack = await link.ReadOne(parameter, CancellationToken.None);
        return (reply, new(
            WriteOutcome.Judge(raw, reply, readBack),
            (readBack as LinkReply<long?>.Answered)?.Value,
            (readBack as LinkReply<long?>.Unanswered)?.Why));
    }
}
