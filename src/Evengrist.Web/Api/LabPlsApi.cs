using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Calibrations of spectra over HTTP.</summary>
internal static class LabPlsApi
{
    public static void MapLabPls(this RouteGroupBuilder lab)
    {
        lab.MapPosed<PlsAnswer>("pls", CalibrateAsync, PlsCase.Help, "Calibrates posed spectra against a reference method; releases nothing, needs no records");
        lab.MapPosed<PlsReadingsAnswer>("pls/predict", ReadAsync, PlsReadCase.Help, "Reads posed spectra with a posed calibration, each value ± and whether it lies outside; what lies outside releases and prices nothing by itself");
    }

    private static Task<IResult> CalibrateAsync(HttpContext context) => Posed.ReplyAsync(context, stream => PlsCase.Read(stream).Then(posed => posed.Pose()), PlsAnswer.To);

    private static Task<IResult> ReadAsync(HttpContext context) => Posed.AnswerAsync(context, PlsReadCase.Read, PlsReadingsAnswer.Of);
}
