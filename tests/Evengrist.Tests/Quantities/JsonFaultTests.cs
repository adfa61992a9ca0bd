using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class JsonFaultTests
{
    private static readonly JsonSerializerOptions Strict = new(JsonSerializerDefaults.Web)
    {
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow, AllowDuplicateProperties = false, RespectRequiredConstructorParameters = true, RespectNullableAnnotations = true,
    };

    [Theory]
    [InlineData("no json", "It is no JSON at line 1, column 2")]
    [InlineData("", "It is no JSON at line 1, column 1")]
    [InlineData("{ \"wall\": 3,\n\"name\": \"x\",, }", "It is no JSON at line 2, column 13")]
    [InlineData("{ \"name\": \"x\" }", "wall must be there and is missing.")]
    [InlineData("{ \"wall\": 3, \"colour\": 1 }", "\"colour\" (line 1, column 23) is not known there. Is it spelt right?")]
    [InlineData("{ \"wall\": 3, \"wall\": 4 }", "\"wall\"")]
    [InlineData("{ \"wall\": \"three\" }", "wall (line 1, column 18): what was read is not of the kind that belongs there.")]
    [InlineData("{ \"wall\": 3, \"name\": null }", "\"name\" (line 1, column 26) is null and has to be something")]
    [InlineData("{ \"wall\": 3, \"kind\": null }", "\"kind\" (line 1, column 28) is null and has to be something")]
    [InlineData("[]", "What stands there (line 1, column 2): what was read is not of the kind that belongs there.")]
    public void Words_TextThatCannotBeRead_SaysWhatAndWhereAndNothingOfTheProgram(string json, string says)
    {
        var words = JsonFault.Words(Assert.ThrowsAny<JsonException>(() => JsonSerializer.Deserialize<Posed>(json, Strict)));
        Assert.StartsWith(says, words, StringComparison.Ordinal);
        Assert.DoesNotMatch("System\\.|Evengrist\\.|\\.NET|Path:|LineNumber|\n", words);
    }

    private sealed record Posed(double Wall, string Name = "")
    {
        public string Kind { get; init; } = "";
    }
}
