using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class JsonFaultKindsTests
{
    private static readonly JsonSerializerOptions Strict = new(JsonSerializerDefaults.Web)
    {
        NumberHandling = JsonNumberHandling.Strict, RespectNullableAnnotations = true, Converters = { new JsonStringEnumConverter(namingPolicy: null, allowIntegerValues: false) },
    };

    [Theory]
    [InlineData("{ \"per\": \"Barrel\" }", "per (line 1): write one of Bushel, Tonne.")]
    [InlineData("{\n\"wall\": \"three\" }", "wall (line 2): write a number, without quotes.")]
    [InlineData("{ \"bins\": 1.5 }", "bins (line 1): write a whole number, without quotes.")]
    [InlineData("{ \"name\": 5 }", "name (line 1): write a text in quotes.")]
    [InlineData("{ \"open\": \"yes\" }", "open (line 1): write true or false.")]
    [InlineData("{ \"parts\": {} }", "parts (line 1): write a list in square brackets.")]
    [InlineData("{ \"parts\": [ 3 ] }", "parts[0] (line 1): write an object in curly brackets.")]
    [InlineData("{ \"parts\": [ { \"per\": \"Barrel\" } ] }", "parts[0].per (line 1): write one of Bushel, Tonne.")]
    [InlineData("{ no", "It is no JSON at line 1")]
    public void Words_AValueOfTheWrongKind_SaysWhichKindBelongsThere(string json, string says)
    {
        var words = JsonFault.Words(Assert.ThrowsAny<JsonException>(() => JsonSerializer.Deserialize<Posed>(json, Strict)), typeof(Posed));
        Assert.StartsWith(says, words, StringComparison.Ordinal);
        Assert.DoesNotMatch("System\\.|Evengrist\\.|Path:|LineNumber|\n", words);
    }

    private sealed record Part(PriceUnit Per = PriceUnit.None);

    private sealed record Posed(decimal Wall = 0, int Bins = 0, string Name = "", bool Open = false, PriceUnit? Per = null, IReadOnlyList<Part>? Parts = null);
}
