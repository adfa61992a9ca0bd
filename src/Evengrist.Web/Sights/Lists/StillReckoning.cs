namespace Evengrist.Web.Sights.Lists;

/// <summary>What is said where a list is asked for before its answer is there.</summary>
public static class StillReckoning
{
    /// <summary>In a sentence that says what to do.</summary>
    public const string Words = "It is still being reckoned: its page shows how far it is. Take the list out once the answer stands there.";
}
