using Evengrist.Records;
using Evengrist.Records.Laboratory;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A photograph of a bake as sent, or one to be shown no longer.</summary>
public sealed class BakePhotoForm
{
    /// <summary>The picture.</summary>
    public IFormFile? File { get; set; }

    /// <summary>What it shows.</summary>
    public string? Shows { get; set; }

    /// <summary>Hash of one to be withdrawn.</summary>
    public string? Hash { get; set; }

    /// <summary>Why.</summary>
    public string? Reason { get; set; }

    /// <summary>Keeps the picture; every fault where it cannot be. No request brings more than <see cref="Security.UploadBound"/> lets through.</summary>
    public IReadOnlyList<string> Keep(Mill mill, string bake, string? by, string nameless)
    {
        var bytes = new byte[File?.Length ?? 0];
        using var stream = File?.OpenReadStream();
        stream?.ReadExactly(bytes);
        return string.IsNullOrWhiteSpace(by) ? [nameless] : BakePhotographs.Keep(mill, bake, bytes, Shows ?? "", by).Faults;
    }

    /// <summary>Withdraws one; every fault where it cannot be.</summary>
    public IReadOnlyList<string> Withdraw(Mill mill, string bake, string? by, string nameless) =>
        string.IsNullOrWhiteSpace(by) ? [nameless] : BakePhotographs.Withdraw(mill, bake, Hash ?? "", Reason ?? "", by);
}
