using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Records.Intake;

/// <summary>A booked slot: who means to bring how much when. A standing arrangement; a change is a new version of it.</summary>
/// <param name="Code">What people call it.</param>
/// <param name="At">When the truck is expected.</param>
/// <param name="From">Code of the field or elevator.</param>
/// <param name="Class">The wheat class.</param>
/// <param name="Tonnes">How much is expected.</param>
/// <param name="Cancelled">Whether it was called off.</param>
public sealed record Booking(string Code, Instant At, string From, string Class, decimal Tonnes, bool Cancelled = false)
{
    /// <summary>The sender's own key of the booking, so that one sent twice is one; may be empty.</summary>
    public string Key { get; init; } = "";

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web) { UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip };

    /// <summary>As it is kept on the shelf: <c>{"at":"2025-07-09T13:00:00Z","from":"DS-2","class":"HW","tonnes":26,"cancelled":false,"key":""}</c>.</summary>
    public string ToJson() => JsonSerializer.Serialize(new Kept(InstantPattern.General.Format(At), From, Class, Tonnes, Cancelled, Key), Options);

    /// <summary>The booking a paper holds; null where it holds none.</summary>
    public static Booking? Read(Paper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        try
        {
            return JsonSerializer.Deserialize<Kept>(paper.Json, Options) is { At: { } at, From: { } from } kept && InstantPattern.General.Parse(at) is { Success: true, Value: var moment }
                ? new Booking(paper.Code, moment, from, kept.Class ?? "", kept.Tonnes, kept.Cancelled) { Key = kept.Key ?? "" }
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private sealed record Kept(string? At, string? From, string? Class, decimal Tonnes, bool Cancelled, string? Key = null);
}
