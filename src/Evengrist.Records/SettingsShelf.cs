using Evengrist.Records.Engines;

namespace Evengrist.Records;

/// <summary>Reads and changes the settings.</summary>
internal sealed class SettingsShelf
{
    private readonly Engine engine;
    private readonly Lock gate;

    public SettingsShelf(Engine engine, Lock gate) => (this.engine, this.gate) = (engine, gate);

    /// <summary>The settings as they are; those never set have their defaults.</summary>
    public MillSettings Get()
    {
        lock (gate)
        {
            return engine.Asking(Read);
        }
    }

    private MillSettings Read()
    {
        var kept = new Dictionary<string, string>(StringComparer.Ordinal);
        using var command = engine.Command("SELECT key, value FROM setting");
        using var row = command.ExecuteReader();
        while (row.Read())
        {
            kept.Add(row.GetString(0), row.GetString(1));
        }

        return MillSettings.From(kept);
    }

    /// <summary>Changes the settings.</summary>
    /// <exception cref="ArgumentException">One of them cannot be.</exception>
    public void Set(MillSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var pairs = settings.ToPairs();
        lock (gate)
        {
            engine.Begin();
            try
            {
                foreach (var (key, value) in pairs)
                {
                    engine.Execute("INSERT INTO setting (key, value) VALUES (@key, @value) ON CONFLICT (key) DO UPDATE SET value = excluded.value", ("@key", key), ("@value", value));
                }

                engine.Commit();
            }
            finally
            {
                engine.Rollback();
            }
        }
    }
}
