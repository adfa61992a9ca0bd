namespace Evengrist.Ledger.Reckoned;

/// <summary>A movement under way: its grams go over evenly from its beginning to its end.</summary>
internal abstract class UnderWay
{
    public required int Movement { get; init; }

    public required int From { get; init; }

    public required int To { get; init; }

    public required double Grams { get; init; }

    public required long At { get; init; }

    public required long Until { get; init; }

    /// <summary>Grams moved so far; behind the even rate only while the place it leaves has nothing to give.</summary>
    public double Moved { get; set; }

    /// <summary>Grams that an even rate has moved by a moment.</summary>
    public double DueAt(long moment) => moment >= Until ? Grams : moment <= At ? 0 : Grams * ((double)(moment - At) / (Until - At));
}
