using System.Text.Json.Serialization;

namespace Evengrist.Season;

/// <summary>Something a person has decided, which a plan then keeps.</summary>
/// <param name="Least">At least so much.</param>
/// <param name="Most">At most so much; the same as the least for a choice that is fixed, +∞ for no limit.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(UseChoice), "use")]
[JsonDerivedType(typeof(BuyChoice), "buy")]
[JsonDerivedType(typeof(ShareChoice), "share")]
public abstract record SeasonChoice(double Least, double Most);

/// <summary>How much of a wheat goes into a flour in a period, t.</summary>
public sealed record UseChoice(string Wheat, string Flour, int Period, double Least, double Most) : SeasonChoice(Least, Most);

/// <summary>How much of an offer is bought in a period, t, all tiers together.</summary>
public sealed record BuyChoice(string Offer, int Period, double Least, double Most) : SeasonChoice(Least, Most);

/// <summary>Which share of a flour's wheat mix a wheat makes up in a period, 0 to 1.</summary>
public sealed record ShareChoice(string Wheat, string Flour, int Period, double Least, double Most) : SeasonChoice(Least, Most);
