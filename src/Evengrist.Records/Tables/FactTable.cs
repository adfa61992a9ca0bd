using Evengrist.Ledger;

namespace Evengrist.Records.Tables;

/// <summary>How one sort of fact lies in its table: number, what it corrects, its content, and its attribution.</summary>
internal abstract class FactTable(string name, params string[] content)
{
    /// <summary>Where the content begins in a row.</summary>
    public const int Content = 2;

    /// <summary>In an order in which rows may be inserted: what is referred to comes first.</summary>
    public static IReadOnlyList<FactTable> All { get; } =
        [new PlaceTable(), new ConnectionTable(), new MovementTable(), new ReadingTable(), new HappeningTable()];

    public string Name { get; } = name;

    /// <summary>The columns read back when the book is filled: all but the attribution.</summary>
    public IReadOnlyList<string> Read { get; } = ["id", "corrects", .. content];

    /// <summary>All columns.</summary>
    public IReadOnlyList<string> Columns { get; } = ["id", "corrects", .. content, "by", "source", "source_key", "recorded_us", "note"];

    /// <summary>Columns that hold the number of a place the fact is about.</summary>
    public abstract IReadOnlyList<string> Places { get; }

    /// <summary>Columns a search for words looks into, besides key and note.</summary>
    public virtual IReadOnlyList<string> Words => [];

    /// <summary>The column that says when it happened.</summary>
    public virtual string Moment => "at_us";

    public static FactTable Of(Draft draft) => All.First(t => t.Takes(draft));

    public abstract bool Takes(Draft draft);

    public abstract bool Takes(Fact fact);

    /// <summary>The fact as a row, in the order of <see cref="Columns"/>; the array is used again for the next row.</summary>
    public void ToRow(Fact fact, object?[] row)
    {
        var attribution = fact.Attribution;
        row[0] = fact.Id.Value;
        row[1] = attribution.Corrects?.Value;
        ToRow(fact, row.AsSpan(Content));
        var rest = row.AsSpan(Read.Count);
        rest[0] = attribution.By;
        rest[1] = attribution.Source;
        rest[2] = attribution.SourceKey;
        rest[3] = attribution.Recorded.ToMicros();
        rest[4] = attribution.Note;
    }

    /// <summary>The fact from a row that begins with the columns of <see cref="Read"/>.</summary>
    public abstract Fact FromRow(Row row, Attribution attribution);

    protected abstract void ToRow(Fact fact, Span<object?> content);
}
