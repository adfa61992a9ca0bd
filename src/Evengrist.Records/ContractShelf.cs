using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Records.Engines;
using NodaTime;

namespace Evengrist.Records;

/// <summary>Contracts by code and version. A version once kept never changes: new terms are a new version.</summary>
public sealed class ContractShelf
{
    private const string Columns = "SELECT code, version, json, \"by\", recorded_us FROM contract";
    private readonly Engine engine;
    private readonly Lock gate;
    private readonly IClock clock;

    internal ContractShelf(Engine engine, Lock gate, IClock clock) => (this.engine, this.gate, this.clock) = (engine, gate, clock);

    /// <summary>Every version of every contract, by code and version.</summary>
    public IReadOnlyList<Contract> All() => Read(Columns + " ORDER BY code, version");

    /// <summary>The newest version of a contract; null where there is none.</summary>
    public Contract? Newest(string code) => Read(Columns + " WHERE code = @code ORDER BY version DESC LIMIT 1", ("@code", code)).SingleOrDefault();

    /// <summary>One version of a contract; null where it is not kept.</summary>
    public Contract? Find(string code, int version) => Read(Columns + " WHERE code = @code AND version = @version", ("@code", code), ("@version", version)).SingleOrDefault();

    /// <summary>Keeps a version. The same once more changes nothing.</summary>
    /// <exception cref="LedgerRefusal">The version is kept already with other terms.</exception>
    /// <exception cref="ArgumentException">The code is empty, the version below 1, or the terms are not JSON.</exception>
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

                engine.Execute("INSERT INTO contract (code, version, json, \"by\", recorded_us) VALUES (@code, @version, @json, @by, @recorded)",
                    ("@code", code), ("@version", version), ("@json", json), ("@by", by), ("@recorded", clock.GetCurrentInstant().ToMicros()));
                engine.Commit();
            }
            finally
            {
                engine.Rollback();
            }
        }
    }

    private static void CheckJson(string json)
    {
        try
        {
            JsonDocument.Parse(json).Dispose();
        }
        catch (JsonException fault)
        {
            throw new ArgumentException($"The terms of a contract are JSON; these are not: {fault.Message}", nameof(json), fault);
        }
    }

    private static void CheckSame(Contract kept, string json)
    {
        if (kept.Json != json)
        {
            throw new LedgerRefusal(LedgerRule.KeyTaken,
                $"Version {kept.Version} of contract {kept.Code} is kept already, with other terms, by {kept.By} on {kept.Recorded}. Keep new terms as version {kept.Version + 1}.");
        }
    }

    private List<Contract> Read(string sql, params ReadOnlySpan<(string Name, object? Value)> parameters)
    {
        lock (gate)
        {
            using var command = engine.Command(sql, parameters);
            using var row = command.ExecuteReader();
            var contracts = new List<Contract>();
            while (row.Read())
            {
                contracts.Add(new(row.GetString(0), row.GetInt32(1), row.GetString(2), row.GetString(3), Micros.ToInstant(row.GetInt64(4))));
            }

            return contracts;
        }
    }
}
