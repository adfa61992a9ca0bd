using NodaTime;

namespace Evengrist.Packing.Boards;

/// <summary>A run as a kept plan has it.</summary>
/// <param name="Order">Number of the order.</param>
/// <param name="Product">Code of the product.</param>
/// <param name="Line">Code of the line.</param>
/// <param name="From">Start, changing over done.</param>
/// <param name="Until">End.</param>
/// <param name="Grams">Net mass packed.</param>
/// <param name="Due">When it is due.</param>
/// <param name="Bin">The bin that feeds it; empty where none is named.</param>
public sealed record PlannedRun(string Order, string Product, string Line, Instant From, Instant Until, long Grams, Instant Due, string Bin = "")
{
    /// <summary>Minutes of changing over before it.</summary>
    public int ChangeMinutes { get; init; }

    /// <summary>Flour run through before it, tonnes.</summary>
    public double FlushTonnes { get; init; }

    /// <summary>Where that flour goes; empty where none is run through.</summary>
    public string FlushTo { get; init; } = "";

    /// <summary>Allergens a named person signs the line clean of before it; empty where nothing is to be signed.</summary>
    public IReadOnlyList<string> ToSign { get; init; } = [];

    /// <summary>Whether it stays where it is when the plan is made anew.</summary>
    public bool IsLocked { get; init; }

    /// <summary>Minutes after it was due; 0 where it is in time.</summary>
    public int LateMinutes => Math.Max(0, (int)Math.Round((Until - Due).TotalMinutes));
}
