using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Laboratory.Certificates;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Prints;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Certificates of analysis: issued, written out, checked.</summary>
internal static class LabCertificateVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var number = new Option<string?>("--number") { Description = "a certificate that was issued, to be written out", HelpName = "NUMBER" };
        var issue = new Option<string?>("--issue") { Description = "code of a released lot of which one is to be issued", HelpName = "LOT" };
        var check = new Option<string?>("--check") { Description = "a code as printed, or a file with a JSON twin: was it issued?", HelpName = "CODE|FILE" };
        var (specification, by) = (new Option<string?>("--specification") { Description = "with --issue: the customer's; the mill's own when left out", HelpName = "CODE" }, new Option<string?>("--by") { Description = "with --issue: who signs", HelpName = "NAME" });
        var at = MomentOption.Of("--at", "with --issue: when; now when left out");
        var (pdf, twin, paper) = (new Option<string?>("--pdf") { Description = "where the PDF is written", HelpName = "FILE" }, new Option<string?>("--twin") { Description = "where the JSON twin is written", HelpName = "FILE" }, new Option<string?>("--paper") { Description = "a4 (when left out) or letter", HelpName = "PAPER" });
        var json = new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" };
        var command = new Command("certificate", "Certificates of analysis: issue one of a released lot, write one out as PDF and JSON twin, or check whether a code or a twin is one that was issued.") { number, issue, check, specification, by, at, pdf, twin, paper, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var size = PaperSize.Find(asked.GetValue(paper)) ?? throw new BadInput(new Fault(null, null, "--paper", Fault.Show(asked.GetValue(paper)!), "a4 or letter"));
            if (new[] { number, issue, check }.Count(o => asked.GetValue(o) is not null) != 1)
            {
                throw new BadInput(Fault.Told("certificate", "Give one of --number, --issue and --check."));
            }

            using var mill = where.Open(asked, clock);
            if (asked.GetValue(check) is { } what)
            {
                return Check(mill, what, asked.GetValue(json), voice);
            }

            var certificate = asked.GetValue(issue) is { } lot ? Issued(mill, lot, asked.GetValue(specification), asked.GetValue(by), MomentOption.Read(asked, at) ?? clock.GetCurrentInstant())
                : IssuedCertificates.Find(mill, asked.GetValue(number)!) ?? throw new BadInput(new Fault(null, null, "--number", Fault.Show(asked.GetValue(number)!), "the number of a certificate that was issued"));
            if (asked.GetValue(pdf) is { } target)
            {
                var settings = mill.Settings;
                File.WriteAllBytes(target, CertificatePdf.Write(certificate, IssuedCertificates.Find(mill, certificate.Number)!.Version, new PrintHead(settings.Name, settings.IsDemonstration, settings.Zone, UnitSystem.Si, clock.GetCurrentInstant()), size));
            }

            if (asked.GetValue(twin) is { } text)
            {
                File.WriteAllText(text, CertificateTwin.Write(certificate));
            }

            return voice.Answer(asked.GetValue(json), CertificateAnswer.Of(certificate), answer => voice.Say($"{answer.Number} version {answer.Version}, signed by {answer.SignedBy}: code {answer.ShortCode}"));
        });
        return command;
    }

    private static AnalysisCertificate Issued(Mill mill, string lot, string? specification, string? by, Instant at)
    {
        var (certificate, refused) = IssuedCertificates.Issue(mill, lot, specification ?? "", by ?? "", at);
        return certificate ?? throw new BadInput([.. refused.Select(r => Fault.Told("--issue", r))]);
    }

    private static int Check(Mill mill, string what, bool json, Voice voice)
    {
        CertificateCheck found;
        if (!File.Exists(what))
        {
            found = IssuedCertificates.Check(mill, what);
        }
        else if (CertificateTwin.TryRead(File.ReadAllText(what), out var twin, out var faults))
        {
            found = IssuedCertificates.Check(mill, twin);
        }
        else
        {
            throw new BadInput([.. faults.Select(f => Fault.Told("--check", f))]);
        }

        return voice.Answer(json, CertificateCheckAnswer.Of(found), answer => voice.Say(answer.Words));
    }
}
