using Evengrist.Planning.Streams;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Flour streams over HTTP.</summary>
public static class StreamsApi
{
    /// <summary>Adds the questions about streams.</summary>
    public static void MapStreamsApi(this IEndpointRouteBuilder app)
    {
        var streams = app.MapGroup("/api/streams").WithTags("Streams");
        streams.MapPosed<StreamsCurveAnswer>("curve", CurveAsync, StreamsCurveCase.Help, "The ash and protein curve of a stream survey, where flour of an ash ends, and what given products come to; opens no valve, needs no records");
        streams.MapSurveys();
        streams.MapLots();
        streams.MapPosed<StreamsAdditionsAnswer>("additions", AdditionsAsync, StreamsAdditionsCase.Help, "Doses and feeder rates of malt, gluten, ascorbic acid and enrichment, what a feeder gave, flour that ran without, rework; sets no feeder, needs no records");
        streams.MapPosed<StreamsDivideAnswer>("divide", DivideAsync, StreamsDivideCase.Help, "The divide of a stream survey into several flours that brings most and keeps every limit, or which limits clash; opens no valve, needs no records");
    }

    private static Task<IResult> CurveAsync(HttpContext context) => Posed.AnswerAsync(context, StreamsCurveCase.Read, c => Parsing.Got(StreamsCurveAnswer.Of(c)));

    private static Task<IResult> DivideAsync(HttpContext context) => Posed.ReplyAsync(context, StreamsDivideCase.Read, spec => StreamsDivideAnswer.Of(DivideSolver.Solve(spec, stop: context.RequestAborted), spec));

    private static Task<IResult> AdditionsAsync(HttpContext context) => Posed.AnswerAsync(context, StreamsAdditionsCase.Read, c => Parsing.Got(StreamsAdditionsAnswer.Of(c)));
}
