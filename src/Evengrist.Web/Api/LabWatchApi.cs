using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Meter or wheat, and validation, over HTTP.</summary>
internal static class LabWatchApi
{
    /// <summary>Adds both.</summary>
    public static void MapLabWatch(this RouteGroupBuilder lab)
    {
        lab.MapPosed<LabWatchAnswer>("watch", WatchAsync, LabWatchCase.Help, "Whether the instrument moved, the flour, both or nothing, by posed pairs of reference and instrument; start, size and how many pairs more; sets no bias, needs no records");
        lab.MapPosed<LabValidateAnswer>("validate", ValidateAsync, LabValidateCase.Help, "Bias, slope and error of an instrument against reference results, each with its test, and what to set; sets nothing, needs no records");
    }

    private static Task<IResult> WatchAsync(HttpContext context) => Posed.ReplyAsync(context, LabWatchCase.Read, LabWatchAnswer.To);

    private static Task<IResult> ValidateAsync(HttpContext context) => Posed.ReplyAsync(context, LabValidateCase.Read, LabValidateAnswer.To);
}
