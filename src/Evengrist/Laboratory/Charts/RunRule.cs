namespace Evengrist.Laboratory.Charts;

/// <summary>A pattern on a chart that chance seldom makes. From memory, as two published sets of rules give them.</summary>
public enum RunRule
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>One value beyond three standard deviations.</summary>
    BeyondThree = 1,

    /// <summary>Two of three in a row beyond two standard deviations on one side.</summary>
    TwoOfThreeBeyondTwo = 2,

    /// <summary>Four of five in a row beyond one standard deviation on one side.</summary>
    FourOfFiveBeyondOne = 3,

    /// <summary>Eight in a row on one side.</summary>
    EightOnOneSide = 4,

    /// <summary>Nine in a row on one side.</summary>
    NineOnOneSide = 5,

    /// <summary>Six in a row that rise or fall.</summary>
    SixInOneDirection = 6,

    /// <summary>Fourteen in a row that go up and down by turns.</summary>
    FourteenByTurns = 7,

    /// <summary>Fifteen in a row within one standard deviation.</summary>
    FifteenWithinOne = 8,

    /// <summary>Eight in a row beyond one standard deviation, on both sides.</summary>
    EightBeyondOne = 9,
}
