namespace Evengrist.Streams.Dividing;

/// <summary>What it would bring to send a stream elsewhere, whole, and nothing else.</summary>
/// <param name="Stream">The stream.</param>
/// <param name="To">Where.</param>
/// <param name="ValuePerHour">What an hour would then bring more; below zero where less.</param>
/// <param name="Missed">Limits that would then be missed; empty where all would be kept.</param>
/// <param name="IsOpen">Whether its spout may send it there.</param>
public sealed record StreamMove(MillStream Stream, FlourWish To, decimal ValuePerHour, IReadOnlyList<MissedLimit> Missed, bool IsOpen)
{
    /// <summary>Every move of every stream from a divide, the streams in the order of their ash, for each the move that brings most first.</summary>
    public static IReadOnlyList<StreamMove> Of(DivideSpec spec, Divided divided)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(divided);
        double[][] shares = [.. spec.Table.Streams.Select(s => divided.Flours.Select(f => f.Parts.Where(p => p.Stream.Code == s.Code).Sum(p => p.Share)).ToArray())];
        return
        [
            .. from s in Enumerable.Range(0, shares.Length)
               orderby spec.Table.Streams[s].AshPercent
               from move in Enumerable.Range(0, spec.Places.Count).Where(p => shares[s][p] < 1).Select(p => Of(spec, divided, shares, s, p)).OrderByDescending(m => m.ValuePerHour)
               select move,
        ];
    }

    private static StreamMove Of(DivideSpec spec, Divided divided, double[][] shares, int stream, int to)
    {
        var moved = Divided.Of(spec, (s, p) => s != stream ? shares[s][p] : p == to ? 1 : 0);
        var (which, place) = (spec.Table.Streams[stream], spec.Places[to]);
        return new StreamMove(which, place, moved.ValuePerHour - divided.ValuePerHour, moved.Missed(spec.Sure), spec.MayGo(which, place));
    }
}
