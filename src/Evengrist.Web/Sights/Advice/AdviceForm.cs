namespace Evengrist.Web.Sights.Advice;

/// <summary>What a person types on the page of an advice: what was seen, or what the driver declares.</summary>
public sealed class AdviceForm
{
    /// <summary>Number of the newest fact that was seen on the ticket.</summary>
    public string? Seen { get; set; }

    /// <summary>The form's own key, so that it is not recorded twice.</summary>
    public string? Key { get; set; }

    /// <summary>Signs that were ticked.</summary>
    public IReadOnlyList<string>? Signs { get; set; }

    /// <summary>The newest load of the trailer.</summary>
    public string? Load1 { get; set; }

    /// <summary>The one before.</summary>
    public string? Load2 { get; set; }

    /// <summary>The one before that.</summary>
    public string? Load3 { get; set; }

    /// <summary>How it was cleaned.</summary>
    public string? Cleaned { get; set; }

    /// <summary>Who declares it.</summary>
    public string? Driver { get; set; }
}
