using Evengrist.Laboratory.Rings;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Web.Sights.Bins;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Many mills as they are asked for on their page: figures and ring results pasted or sent as files.</summary>
public sealed class MillsForm
{
    /// <summary>What is compared, with unit and basis.</summary>
    public string? What { get; set; }

    /// <summary>Lower limit of the flour.</summary>
    public string? Lower { get; set; }

    /// <summary>Upper limit of the flour.</summary>
    public string? Upper { get; set; }

    /// <summary>The laboratory whose bias is 0; empty for the mean of all.</summary>
    public string? Reference { get; set; }

    /// <summary>The mills' figures, where no file was chosen.</summary>
    public string? Mills { get; set; }

    /// <summary>A file of them; it goes before the text.</summary>
    public IFormFile? MillsFile { get; set; }

    /// <summary>The ring results, where no file was chosen; empty for none.</summary>
    public string? Ring { get; set; }

    /// <summary>A file of them; it goes before the text.</summary>
    public IFormFile? RingFile { get; set; }

    /// <summary>The answer; null where there are faults.</summary>
    public LabMillsAnswer? Answer { get; private set; }

    /// <summary>Every fault.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>The worked example: limits 11.7 and 12.1 of protein, three mills, a ring of three laboratories.</summary>
    public static MillsForm Example
    {
        get
        {
            var form = new MillsForm { What = "protein, % on 14 % moisture", Lower = "11.7", Upper = "12.1", Reference = "brand", Mills = MillsTables.MillsExample, Ring = MillsTables.RingExample };
            form.Reckon();
            return form;
        }
    }

    /// <summary>Takes files into the texts, and reckons.</summary>
    public void Reckon()
    {
        List<string> faults = [];
        (Mills, var millsFault) = PostedText.Of(MillsFile, Mills, "fewer mills");
        (Ring, var ringFault) = PostedText.Of(RingFile, Ring, "fewer results");
        faults.AddRange(new[] { millsFault, ringFault }.OfType<string>());
        var (lower, upper) = (TypedNumber.Read("The lower limit", Lower, faults), TypedNumber.Read("The upper limit", Upper, faults));
        var mills = string.IsNullOrWhiteSpace(Mills) ? [] : Taken("The mills, ", MillsTables.Mills(Mills), faults);
        var ring = string.IsNullOrWhiteSpace(Ring) ? [] : Taken("The ring test, ", MillsTables.Ring(Ring), faults);
        if (string.IsNullOrWhiteSpace(Mills) && millsFault is null)
        {
            faults.Add("There are no mills: choose a file, or paste its text.");
        }

        var reference = string.IsNullOrWhiteSpace(Reference) ? null : Reference.Trim();
        Faults = faults.Count > 0 ? faults : MillsModel.Faults(mills, ring, lower, upper, reference);
        Answer = Faults.Count > 0 ? null : LabMillsAnswer.To(new LabMillsCase { Mills = mills, Ring = ring, Lower = lower, Upper = upper, Reference = reference }).Answer;
    }

    private static IReadOnlyList<T> Taken<T>(string which, Parsed<IReadOnlyList<T>> read, List<string> faults)
    {
        faults.AddRange(read.Faults.Select(f => which + f));
        return read.Ok ? read.Value : [];
    }
}
