using NodaTime;

namespace Evengrist.Quantities.Lists;

/// <summary>Says column by column what a list of things of one type looks like when it is taken out.</summary>
/// <typeparam name="T">What stands on a row.</typeparam>
public sealed class ListOf<T>
{
    private readonly List<ListColumn> columns = [];
    private readonly List<Func<T, object?>> values = [];

    /// <summary>A column of words; null and empty are the same.</summary>
    /// <param name="heading">What stands in it.</param>
    /// <param name="value">The words of a row.</param>
    public ListOf<T> Text(string heading, Func<T, string?> value) => Add(new(heading, ListType.Text), r => value(r) is { Length: > 0 } text ? text : null);

    /// <summary>A column of whole numbers.</summary>
    /// <param name="heading">What stands in it.</param>
    /// <param name="value">The number of a row; null where there is none.</param>
    /// <param name="unit">Its unit; null for a bare number.</param>
    /// <param name="origin">Where it comes from.</param>
    public ListOf<T> Whole(string heading, Func<T, long?> value, ListUnit? unit = null, ListOrigin origin = ListOrigin.Stated) => Add(new(heading, ListType.Whole, unit, "", origin), r => value(r));

    /// <summary>A column of numbers.</summary>
    /// <param name="heading">What stands in it.</param>
    /// <param name="origin">Where it comes from.</param>
    /// <param name="unit">Its unit; null where it has none.</param>
    /// <param name="value">The number of a row; null where there is none.</param>
    /// <param name="basis">Its basis; empty where it needs none.</param>
    public ListOf<T> Number(string heading, ListOrigin origin, ListUnit? unit, Func<T, decimal?> value, string basis = "") => Add(new(heading, ListType.Number, unit, basis, origin), r => value(r));

    /// <summary>A column of numbers of a model; what is no finite number is left empty.</summary>
    /// <inheritdoc cref="Number"/>
    public ListOf<T> Reckoned(string heading, ListUnit? unit, Func<T, double?> value, string basis = "") => Add(new(heading, ListType.Number, unit, basis, ListOrigin.Reckoned), r => value(r) is { } number && double.IsFinite(number) ? number : null);

    /// <summary>A column of masses in kilograms, to the gram, as they lie.</summary>
    /// <param name="heading">What stands in it.</param>
    /// <param name="origin">Where it comes from.</param>
    /// <param name="value">The mass of a row; null where there is none.</param>
    public ListOf<T> Mass(string heading, ListOrigin origin, Func<T, Mass?> value) => Add(new(heading, ListType.Number, ListUnit.Kilogram, "", origin), r => value(r)?.Kilograms);

    /// <summary>A column of moments.</summary>
    /// <param name="heading">What stands in it.</param>
    /// <param name="value">The moment of a row; null where there is none.</param>
    public ListOf<T> Moment(string heading, Func<T, Instant?> value) => Add(new(heading, ListType.Moment), r => value(r));

    /// <summary>A column of days.</summary>
    /// <param name="heading">What stands in it.</param>
    /// <param name="value">The day of a row; null where there is none.</param>
    public ListOf<T> Day(string heading, Func<T, LocalDate?> value) => Add(new(heading, ListType.Day), r => value(r));

    /// <summary>A column of yes and no.</summary>
    /// <param name="heading">What stands in it.</param>
    /// <param name="value">Which; null where neither is known.</param>
    public ListOf<T> YesNo(string heading, Func<T, bool?> value) => Add(new(heading, ListType.YesNo), r => value(r));

    /// <summary>The list of these rows; they are read when the list is.</summary>
    /// <param name="name">Short name, small letters and hyphens.</param>
    /// <param name="title">What it is, in words.</param>
    /// <param name="rows">What stands on it.</param>
    public TakenList List(string name, string title, IEnumerable<T> rows) => new(name, title, [.. columns], rows.Select(r => (IReadOnlyList<object?>)[.. values.Select(v => v(r))]));

    private ListOf<T> Add(ListColumn column, Func<T, object?> value)
    {
        if (columns.Any(c => c.Heading == column.Heading))
        {
            throw new ArgumentException($"A column \"{column.Heading}\" stands there already.", nameof(column));
        }

        columns.Add(column);
        values.Add(value);
        return this;
    }
}
