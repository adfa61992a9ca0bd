using Evengrist.Laboratory.Bake;
using Evengrist.Laboratory.Samples;
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

    /// <summary>The newest version of one bake; null where none is kept under the code.</summary>
    public static (BakeSession Session, int Version, string By)? Find(Mill mill, string code)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(BakeSession.PaperKind).Newest(code) is { } paper && BakeSession.TryRead(paper.Json, out var session, out _) ? (session, paper.Version, paper.By) : null;
    }

    /// <summary>Keeps a bake as the next version of its code; everything against it where it cannot be, and then nothing is kept. A question is answered by the bake's reason.</summary>
    /// <returns>The version; 0 where it was not kept.</returns>
    public static (int Version, IReadOnlyList<Objection> Objections) Keep(Mill mill, BakeSession session, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(session);
        string[] unknown = mill.Ask(view => session.Flours.Where(f => view.Book.Find(f.Place) is null).Select(f => $"Flour {f.Flour}: there is no place \"{f.Place}\". Look for a typing error, or leave it out.").ToArray());
        string[] faults =
        [
            .. session.Faults(), .. unknown, .. session.At > now ? [$"The bake lies in the future: {session.At}."] : Array.Empty<string>(), .. string.IsNullOrWhiteSpace(by) ? ["Say who keeps it."] : Array.Empty<string>(),
        ];
        IReadOnlyList<string> questions = session.Reason.Trim().Length > 0 ? [] : session.Questions();
        return faults.Length + questions.Count > 0
            ? (0, [.. faults.Select(f => new Objection(f, false)), .. questions.Select(q => new Objection(q, true))])
            : (mill.Papers(BakeSession.PaperKind).KeepNext(session.Code, session.ToJson(), by), []);
    }
}
