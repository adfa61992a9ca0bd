namespace Evengrist.Streams.Additions;

/// <summary>What must be known before a person acts on what additions say.</summary>
public static class AdditionCautions
{
    /// <summary>What the program does not do.</summary>
    public const string Advice = "Advice only: the program starts and sets no feeder and releases no flour. A named person sets the dose, and weighs what the feeder gives.";

    /// <summary>Law and label.</summary>
    public const string Law = "What may be put into flour, how much and what the label says is for local food law: the figures here are no permission, and other markets have other ones.";

    /// <summary>Dust.</summary>
    public const string Dust = "Malt, gluten, premix and flour are dusts that explode, and some harm who breathes them: the site's dust rules and the maker's safety sheet hold when a hopper is filled. No hand goes into a feeder that is not locked off.";

    /// <summary>Allergens.</summary>
    public const string Allergens = "Wheat is an allergen; malt and gluten come from barley and wheat, soy is another. What label and recipe do not name does not go in, by rework neither: a person approves it under the site's plan.";

    /// <summary>Lots.</summary>
    public const string Lots = "Every lot of an additive and every tote of rework is recorded as it goes in, so that a trace runs through it.";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Advice, Law, Dust, Allergens, Lots];
}
