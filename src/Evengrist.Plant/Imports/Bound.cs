using Evengrist.Plant.Tables;
using NodaTime;

namespace Evengrist.Plant.Imports;

/// <summary>A column found in a file.</summary>
/// <param name="Column">What it is.</param>
/// <param name="Index">Where it stands, from 0.</param>
/// <param name="Heading">Its heading as written.</param>
/// <param name="Unit">What stands in the brackets; empty for none.</param>
internal sealed record Bound(Column Column, int Index, string Heading, string Unit);

/// <summary>A file's heading understood: which column is which, the decimal mark, the zone.</summary>
internal sealed record Bindings(IReadOnlyDictionary<string, Bound> Columns, Row Heading, DecimalMark Mark, DateTimeZone? Zone);
