using System.Text.Json;
using Evengrist.Laboratory.Bake;

namespace Evengrist.Records.Laboratory;

/// <summary>Photographs of bakes: what each shows is a paper by bake and hash, the picture is kept once by its hash. One that is withdrawn stays in the records.</summary>
public static class BakePhotographs
{
    /// <summary>Most photographs of one bake [ours].</summary>
    public const int MostOfABake = 12;

    private const string PictureKind = "picture";

    /// <summary>The photographs that stand of a bake, in the order they were kept.</summary>
    public static IReadOnlyList<BakePhotograph> Of(Mill mill, string bake) => [.. All(mill).Where(p => p.Bake == bake && p.Withdrawn.Length == 0)];

    /// <summary>The newest word on every photograph, withdrawn ones too, in the order they were kept.</summary>
    public static IReadOnlyList<BakePhotograph> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(BakePhotograph.PaperKind).NewestOfEach().Read<BakePhotograph>(BakePhotograph.TryRead).OrderBy(p => p.Paper.Recorded).Select(p => p.Value)];
    }

    /// <summary>Keeps a photograph of a bake; every fault where it cannot be kept, and then nothing is.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="bake">Code of a bake that is kept.</param>
    /// <param name="bytes">The picture.</param>
    /// <param name="shows">What it shows.</param>
    /// <param name="by">Who keeps it.</param>
    public static (BakePhotograph? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, string bake, byte[] bytes, string shows, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(bytes);
        var photograph = new BakePhotograph(bake, BakePhotograph.HashOf(bytes), PictureFile.TypeOf(bytes) ?? "", bytes.Length, (shows ?? "").Trim());
        string[] faults =
        [
            .. mill.Papers(BakeSession.PaperKind).Newest(bake) is null ? [$"There is no bake “{bake}”: keep the bake first."] : Array.Empty<string>(),
            .. PictureFile.Fault(bytes) is { } fault ? [fault] : Array.Empty<string>(), .. photograph.Faults(),
            .. string.IsNullOrWhiteSpace(by) ? ["Say who keeps it."] : Array.Empty<string>(),
            .. Of(mill, bake).Count(p => p.Hash != photograph.Hash) >= MostOfABake ? [$"A bake has up to {MostOfABake} photographs: withdraw one first."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        mill.Papers(PictureKind).KeepNext(photograph.Hash, JsonSerializer.Serialize(Convert.ToBase64String(bytes)), by);
        mill.Papers(BakePhotograph.PaperKind).KeepNext(photograph.Code, photograph.ToJson(), by);
        return (photograph, []);
    }

    /// <summary>Shows a photograph no longer; it stays in the records. Every fault where that cannot be.</summary>
    public static IReadOnlyList<string> Withdraw(Mill mill, string bake, string hash, string reason, string by)
    {
        if (Of(mill, bake).FirstOrDefault(p => p.Hash == hash) is not { } photograph)
        {
            return [$"Bake “{bake}” shows no such photograph."];
        }

        var withdrawn = photograph with { Withdrawn = (reason ?? "").Trim() };
        string[] faults = [.. withdrawn.Faults(), .. withdrawn.Withdrawn.Length == 0 ? ["Say why it is withdrawn."] : Array.Empty<string>(), .. string.IsNullOrWhiteSpace(by) ? ["Say who withdraws it."] : Array.Empty<string>()];
        if (faults.Length == 0)
        {
            mill.Papers(BakePhotograph.PaperKind).KeepNext(photograph.Code, withdrawn.ToJson(), by);
        }

        return faults;
    }

    /// <summary>A picture by its hash, with its type; null where none is kept, or where the bytes no longer have the hash.</summary>
    public static (byte[] Bytes, string MediaType)? Picture(Mill mill, string hash)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(PictureKind).Newest(hash) is { } paper && Convert.FromBase64String(JsonSerializer.Deserialize<string>(paper.Json)!) is var bytes
            && BakePhotograph.HashOf(bytes) == hash && PictureFile.TypeOf(bytes) is { } type ? (bytes, type) : null;
    }
}
