namespace Evengrist.Season.Futures;

/// <summary>The constants of the rule by which a future is milled; all [design].</summary>
/// <remarks>Model: docs/model/season-promise.md.</remarks>
public static class FutureRule
{
    /// <summary>What it is taken to cost to use a t more or less of a wheat than planned, as a share of the dearest worth in the plan: enough to follow the plan where nothing is gained by leaving it.</summary>
    public const double Follow = 0.004;

    /// <summary>How much dearer a miss or unmet flour is today than in the plan: a plan made anew always puts what cannot be kept at the end.</summary>
    public const double Defence = 2;

    /// <summary>The most by which what wheat is worth moves when stock runs ahead of the plan or behind it, a share.</summary>
    public const double MostSway = 0.3;

    /// <summary>How often a mix is made anew at most, because it draws further into a wheat, or less far, than it was made by.</summary>
    public const int Looks = 6;

    /// <summary>By how much what is drawn may differ from what a mix was made by, a share of the limit, on its scale.</summary>
    public const double Near = 0.0005;

    /// <summary>How many standard deviations of demand above what is expected lie in store before a unit stands still.</summary>
    public const double Standing = 2;
}
