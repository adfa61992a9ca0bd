using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Tests.Season;

public sealed class SeasonFaultsTests
{
    private static readonly SeasonQuality Known = new(new Dictionary<Property, SeasonValue> { [Property.Protein] = new(13, 0.2, Basis.At12) });

    private static readonly SeasonSpec Good = new(
        [new(new LocalDate(2025, 9, 15), 7), new(new LocalDate(2025, 9, 22), 7)], [new("A", 10, [100, 100])], [new("B1", "HW", 500, 12, Known)],
        [new("WB", "A", [75, 75], 0.75, 900) { Limits = [new(Property.Protein, 12, 14, 400) { Basis = Basis.At12 }] }], "USD");

    private static SeasonFlour Flour => Good.Flours[0];

    private static SeasonLimit Limit => Flour.Limits[0];

    public static readonly TheoryData<string, string, SeasonSpec> Bad = new()
    {
        { "flour WB, demand, period 1", "it is -5", Good with { Flours = [Flour with { Demand = [75, -5] }] } },
        { "flour WB, demand, period 1", "it is NaN", Good with { Flours = [Flour with { Demand = [75, double.NaN] }] } },
        { "flour WB, demand", "there are 1 numbers for 2 periods", Good with { Flours = [Flour with { Demand = [75] }] } },
        { "flour WB, protein", "its least, 15, lies above its most, 14", Good with { Flours = [Flour with { Limits = [Limit with { Least = 15 }] }] } },
        { "flour WB, property 777", "there is no such property", Good with { Flours = [Flour with { Limits = [Limit with { What = (Property)777 }] }] } },
        { "flour WB, temperature", "does not average", Good with { Flours = [Flour with { Limits = [new(Property.Temperature, 1, 2, 3)] }] } },
        { "flour WB, protein", "its moisture basis is missing", Good with { Flours = [Flour with { Limits = [Limit with { Basis = default }] }] } },
        { "flour WB, protein", "limited twice", Good with { Flours = [Flour with { Limits = [Limit, Limit] }] } },
        { "flour WB, ash", "wheat B1 may go into it and its ash is not known", Good with { Flours = [Flour with { Limits = [new(Property.Ash, null, 1.6, 400) { Basis = Basis.At14 }] }] } },
        { "flour WB, demand, period 1", "has no hours then", Good with { Units = [new("A", 10, [100, 0])] } },
        { "mill unit A, hours, period 0", "it is 200", Good with { Units = [new("A", 10, [200, 100])] } },
        { "wheats", "every bin is empty", Good with { Wheats = [Good.Wheats[0] with { OpeningTonnes = 0 }] } },
        { "wheat B1, opening", "it is -1", Good with { Wheats = [Good.Wheats[0] with { OpeningTonnes = -1 }] } },
        { "wheat B1, opening", "it is NaN", Good with { Wheats = [Good.Wheats[0] with { OpeningTonnes = double.NaN }] } },
        { "wheat B1, layers", "they sum to 400 t", Good with { Wheats = [Good.Wheats[0] with { Layers = [new(400, 12, Known)] }] } },
        { "wheat B1", "its bin X is not among the bins", Good with { Wheats = [Good.Wheats[0] with { Home = "X" }] } },
        { "wheat B1", "the code stands 2 times", Good with { Wheats = [Good.Wheats[0], Good.Wheats[0]] } },
        { "wheat B1, delivery 0", "period 2 is not among the 2 periods", Good with { Wheats = [Good.Wheats[0] with { Deliveries = [new(2, 10)] }] } },
        { "period 1", "follow each other without a gap", Good with { Periods = [Good.Periods[0], new(new LocalDate(2025, 9, 23), 7)] } },
        { "periods", "there is none", Good with { Periods = [] } },
        { "carry-out of SW", "no wheat is of this class", Good with { CarryOut = [new("SW", 10)] } },
        { "choice 0", "there is no wheat X", Good with { Choices = [new UseChoice("X", "WB", 0, 0, 10)] } },
        { "choice 0", "it lies from 20 to 10", Good with { Choices = [new UseChoice("B1", "WB", 0, 20, 10)] } },
        { "flour WB, most gates", "it is 0", Good with { Flours = [Flour with { MostGates = 0 }] } },
        { "lists", "holds nothing", Good with { Wheats = [null!] } },
        { "lists", "holds nothing", Good with { Flours = [Flour with { Limits = [null!] }] } },
        { "currency", "it is missing", Good with { Currency = " " } },
    };

    [Fact]
    public void Faults_OfAGoodSpec_AreNone() => Assert.Empty(Good.Faults());

    [Theory]
    [MemberData(nameof(Bad), DisableDiscoveryEnumeration = true)]
    public void Faults_OfABadSpec_NameThePlaceAndWhatToDo(string where, string what, SeasonSpec spec) =>
        Assert.Contains(spec.Faults(), f => f.Where == where && f.What.Contains(what, StringComparison.Ordinal));
}
