using Evengrist.Laboratory.Bake;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>The bakes a laboratory keeps: papers by code; a correction is the next version.</summary>
public static class BakeSessions
{
    /// <summary>The newest version of every bake by a moment, the newest bake first.</summary>
    public static IReadOnlyList<(BakeSession Session, int Version, string By)> Newest(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(BakeSession.PaperKind).NewestOfEach().Read<BakeSession>(BakeSession.TryRead).Where(b => b.Value.At <= at)
            .OrderByDescending(b => b.Value.At).Select(b => (b.Value, b.Paper.Version, b.Paper.By))];
    }

    /// <summary>Keeps a bake as the next version of its code; every fault where it cannot be, and then nothing is kept.</summary>
    /// <returns>The version; 0 where there are faults.</returns>
    public static (int Version, IReadOnlyList<string> Faults) Keep(Mill mill, BakeSession session, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(session);
        string[] unknown = mill.Ask(view => session.Flours.Where(f => view.Book.Find(f.Place) is null).Select(f => $"Flour {f.Flour}: there is no place \"{f.Place}\". Look for a typing error, or leave it out.").ToArray());
        string[] faults =
        [
            .. session.Faults(), .. unknown, .. session.At > now ? [$"The bake lies in the future: {session.At}."] : Array.Empty<string>(), .. string.IsNullOrWhiteSpace(by) ? ["Say who keeps it."] : Array.Empty<string>(),
        ];
        return faults.Length > 0 ? (0, faults) : (mill.Papers(BakeSession.PaperKind).KeepNext(session.Code, session.ToJson(), by), []);
    }
}
