using Evengrist.Laboratory.Rings;
using Evengrist.Plant.Answers;
using Evengrist.Quantities.Lists;
using Evengrist.Web.Sights.Lists;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Mills beside each other and the laboratories that read them, as lists of what was sent in with the form; nothing of it is kept.</summary>
public static class MillsLists
{
    private const string Page = "/laboratory/mills";

    /// <summary>All three.</summary>
    public static IReadOnlyList<PageList> All { get; } = [.. ((PageList[])
    [
        PageList.Answer(Page, "mills-compared", "Mills beside each other, the worst first", new ListOf<(string What, MillAnswer Mill)>()
                .Text("what, unit and basis", r => r.What).Text("mill", r => r.Mill.Mill).Text("laboratory", r => r.Mill.Laboratory).Number("mean as reported", ListOrigin.Seen, null, r => (decimal)r.Mill.Mean).Number("one standard deviation as reported", ListOrigin.Seen, null, r => (decimal)r.Mill.Deviation)
                .Reckoned("Cpk as reported", null, r => r.Mill.Cpk).Reckoned("Cpk as reported, from (95 %)", null, r => r.Mill.CpkFrom).Reckoned("Cpk as reported, up to (95 %)", null, r => r.Mill.CpkTo).Reckoned("outside as reported", ListUnit.Percent, r => r.Mill.PercentOut)
                .Reckoned("bias of the laboratory", null, r => r.Mill.LaboratoryBias).Reckoned("one standard deviation of the bias", null, r => r.Mill.LaboratoryBiasDeviation).Reckoned("Cpk of the flour", null, r => r.Mill.FlourCpk).Reckoned("Cpk of the flour, from (95 %)", null, r => r.Mill.FlourCpkFrom).Reckoned("Cpk of the flour, up to (95 %)", null, r => r.Mill.FlourCpkTo)
                .Reckoned("outside, of the flour", ListUnit.Percent, r => r.Mill.FlourPercentOut).Text("remark", r => r.Mill.Remark),
            (_, context) => Of(context, (what, answer) => answer.Mills.Select(m => (what, m)))),
        PageList.Answer(Page, "ring-laboratories", "Laboratories of a ring test: how each reads by samples that others read too", new ListOf<(string What, LaboratoryBias Laboratory)>()
                .Text("what, unit and basis", r => r.What).Text("laboratory", r => r.Laboratory.Laboratory).Reckoned("reads off by", null, r => r.Laboratory.Bias).Reckoned("one standard deviation of that", null, r => r.Laboratory.Deviation).Text("against", r => r.Laboratory.Against).YesNo("more than chance, 95 %", r => r.Laboratory.IsBeyondChance),
            (_, context) => Of(context, (what, answer) => answer.Laboratories.Select(l => (what, l)))),
        PageList.Answer(Page, "ring-methods", "Precision of the method between laboratories, by sample of a ring test", new ListOf<(string What, RingPrecisionAnswer Sample)>()
                .Text("what, unit and basis", r => r.What).Text("sample", r => r.Sample.Sample).Whole("laboratories", r => r.Sample.Laboratories, null, ListOrigin.Seen).Whole("results", r => r.Sample.Results, null, ListOrigin.Seen).Reckoned("mean", null, r => r.Sample.Mean).Reckoned("standard deviation within a laboratory", null, r => r.Sample.Repeatability)
                .Reckoned("standard deviation between laboratories", null, r => r.Sample.Reproducibility).Reckoned("Cochran's statistic", null, r => r.Sample.Cochran).Reckoned("its limit", null, r => r.Sample.CochranLimit),
            (_, context) => Of(context, (what, answer) => answer.Methods.Select(m => (what, m)))),
    ]).Select(l => l with { IsOfForm = true })];

    private static (IEnumerable<T>? Rows, string Why) Of<T>(HttpContext context, Func<string, LabMillsAnswer, IEnumerable<T>> rows)
    {
        var sent = HttpMethods.IsPost(context.Request.Method) && context.Request.HasFormContentType ? Read(context.Request.Form) : context.Request.Query["example"] == "true" ? MillsForm.Example : null;
        return sent switch
        {
            { Answer: { } answer } => (rows(sent.What?.Trim() ?? "", answer), ""),
            { } => (null, string.Join(" ", sent.Faults)),
            null => (null, "Nothing is compared yet: bring the mills' figures in with the form of the page, and take the list out by its buttons."),
        };
    }

    private static MillsForm Read(IFormCollection form)
    {
        string? Text(string name) => form["Mills." + name].ToString() is { Length: > 0 } text ? text : null;
        var sent = new MillsForm
        {
            What = Text("What"), Lower = Text("Lower"), Upper = Text("Upper"), Reference = Text("Reference"), Mills = Text("Mills"), Ring = Text("Ring"), MillsFile = form.Files["Mills.MillsFile"], RingFile = form.Files["Mills.RingFile"],
        };
        sent.Reckon();
        return sent;
    }
}
