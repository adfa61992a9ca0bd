using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Records.Engines;
using NodaTime;

namespace Evengrist.Records;

/// <summary>Papers of one kind by code and version. A version once kept never changes: a change is a new version.</summary>
public sealed class PaperShelf
{
    private const string Columns = "SELECT code, version, json, \"by\", recorded_us FROM paper WHERE kind = @kind";
    private readonly string kind;
    private readonly Engine engine;
    private readonly Lock gate;
    private readonly IClock clock;

    internal PaperShelf(string kind, Engine engine, Lock gate, IClock clock) => (this.kind, this.engine, this.gate, this.clock) = (kind, engine, gate, clock);

    /// <summary>Every version of every paper of the kind, by code and version.</summary>
    public IReadOnlyList<Paper> All() => Read(Columns + " ORDER BY code, version");

    /// <summary>The newest version of every paper of the kind, by code.</summary>
    public IReadOnlyList<Paper> NewestOfEach() => Read(Columns + " AND version = (SELECT MAX(other.version) FROM paper other WHERE other.kind = paper.kind AND other.code = paper.code) ORDER BY code");

    /// <summary>The newest version of a paper; null where there is none.</summary>
    public Paper? Newest(string code) => Read(Columns + " AND code = @code ORDER BY version DESC LIMIT 1", ("@code", code)).SingleOrDefault();

    /// <summary>One version of a paper; null where it is not kept.</summary>
    public Paper? Find(string code, int version) => Read(Columns + " AND code = @code AND version = @version", ("@code", code), ("@version", version)).SingleOrDefault();

    /// <summary>Keeps a version. The same once more changes nothing.</summary>
    /// <exception cref="LedgerRefusal">The version is kept already and says something else.</exception>
    /// <exception cref="ArgumentException">The code is empty, the version below 1, or what it says is not JSON.</exception>
    public void Keep(string code, int version, string json, string by)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(code);
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        ArgumentOutOfRangeException.ThrowIfLessThan(version, 1);
        CheckJson(json);
        lock (gate)
        {
            engine.Begin();
            try
            {
                if (Find(code, version) is { } kept)
                {
                    CheckSame(kept, json);
                    return;
                }

                Insert(code, version, json, by);
                engine.Commit();
            }
            finally
            {
                engine.Rollback();
            }
        }
    }

    /// <summary>Keeps what is said as the next version, or finds that the newest says the same already.</summary>
    /// <returns>The version that says it.</returns>
    /// <exception cref="ArgumentException">The code is empty, or what it says is not JSON.</exception>
    public int KeepNext(string code, string json, string by)
    {
        lock (gate)
        {
            var newest = Newest(code);
            var version = newest is null ? 1 : newest.Json == json ? newest.Version : newest.Version + 1;
            Keep(code, version, json, by);
            return version;
        }
    }

    /// <summary>Keeps what is said as a further version, unless a version of any paper of the kind says the same already: for what happened once, as a check or a setting.</summary>
    public void KeepOnce(string code, string json, string by)
    {
        lock (gate)
        {
            if (!All().Any(p => p.Json == json))
            {
                KeepNext(code, json, by);
            }
        }
    }

    /// <summary>Keeps papers, all of them or none: as the first version where there is none of the code, as a further one where what is said is news, and not at all where it is known.</summary>
    /// <param name="papers">Codes with what they say; a code may stand there again.</param>
    /// <param name="isNews">Whether the newest kept version does not say it yet.</param>
    /// <param name="by">Who keeps them.</param>
    /// <returns>How many were new, said something further, and were known.</returns>
    public (int Added, int Further, int Known) KeepEach(IReadOnlyList<(string Code, string Json)> papers, Func<Paper, string, bool> isNews, string by)
    {
        ArgumentNullException.ThrowIfNull(papers);
        ArgumentNullException.ThrowIfNull(isNews);
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        var (added, further, known) = (0, 0, 0);
        lock (gate)
        {
            engine.Begin();
            try
            {
                foreach (var (code, json) in papers)
                {
                    ArgumentException.ThrowIfNullOrWhiteSpace(code);
                    CheckJson(json);
                    var newest = Newest(code);
                    if (newest is not null && !isNews(newest, json))
                    {
                        known++;
                        continue;
                    }

                    Insert(code, (newest?.Version ?? 0) + 1, json, by);
                    (added, further) = newest is null ? (added + 1, further) : (added, further + 1);
                }

                engine.Commit();
            }
            finally
            {
                engine.Rollback();
            }
        }

        return (added, further, known);
    }

    private static void CheckJson(string json)
    {
        try
        {
            JsonDocument.Parse(json).Dispose();
        }
        catch (JsonException fault)
        {
            throw new ArgumentException($"A paper is JSON; this is not: {fault.Message}", nameof(json), fault);
        }
    }

    private void CheckSame(Paper kept, string json)
    {
        if (kept.Json != json)
        {
            throw new LedgerRefusal(LedgerRule.KeyTaken,
                $"Version {kept.Version} of {kind} {kept.Code} is kept already and says something else, by {kept.By} on {kept.Recorded}. Keep a change as version {kept.Version + 1}.");
        }
    }

    private void Insert(string code, int version, string json, string by) =>
        engine.Execute("INSERT INTO paper (kind, code, version, json, \"by\", recorded_us) VALUES (@kind, @code, @version, @json, @by, @recorded)",
            ("@kind", kind), ("@code", code), ("@version", version), ("@json", json), ("@by", by), ("@recorded", clock.GetCurrentInstant().ToMicros()));

    private List<Paper> Read(string sql, params (string Name, object? Value)[] parameters)
    {
        lock (gate)
        {
            return engine.Asking(() =>
            {
                using var command = engine.Command(sql, [("@kind", kind), .. parameters]);
                using var row = command.ExecuteReader();
                var papers = new List<Paper>();
                while (row.Read())
                {
                    papers.Add(new(row.GetString(0), row.GetInt32(1), row.GetString(2), row.GetString(3), Micros.ToInstant(row.GetInt64(4))));
                }

                return papers;
            });
        }
    }
}
