using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Quantities;

namespace Evengrist.Web.Api;

/// <summary>Reads the JSON body of a request strictly; what cannot be read is refused with words and the place.</summary>
internal static class ApiBody
{
    private static readonly JsonSerializerOptions Strict = new(JsonSerializerDefaults.Web)
    {
        PropertyNameCaseInsensitive = false, NumberHandling = JsonNumberHandling.Strict, UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true,
    };

    /// <summary>The body, or the refusal (400) that says what is wrong with it.</summary>
    /// <param name="request">The request.</param>
    /// <param name="example">What a body looks like.</param>
    public static async Task<(T? Body, IResult? Refused)> ReadAsync<T>(HttpRequest request, string example)
        where T : class
    {
        try
        {
            return await JsonSerializer.DeserializeAsync<T>(request.Body, Strict, request.HttpContext.RequestAborted) is { } body ? (body, null) : (null, Refuse("The body is null.", example));
        }
        catch (JsonException fault)
        {
            return (null, Refuse(JsonFault.Words(fault), example));
        }
    }

    private static IResult Refuse(string words, string example) =>
        Results.Problem($"{words} A body looks like {example}", statusCode: StatusCodes.Status400BadRequest, title: "The body cannot be read");
}
