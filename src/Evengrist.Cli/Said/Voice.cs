using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Plant;

namespace Evengrist.Cli.Said;

/// <summary>What the program says: answers on standard output, faults on standard error.</summary>
internal sealed class Voice(TextWriter output, TextWriter error)
{
    private static readonly JsonSerializerOptions Plain = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Converters = { new JsonStringEnumConverter() },
    };

    public void Say(string line = "") => output.WriteLine(line);

    /// <summary>Says lines, one after another.</summary>
    public void Say(IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            Say(line);
        }
    }

    /// <summary>Says how far something is, beside the answer.</summary>
    public void Tell(string line) => error.WriteLine(line);

    public void Json<T>(T answer) => output.WriteLine(JsonSerializer.Serialize(answer, Plain));

    /// <summary>Each fault on its own line.</summary>
    public int Refuse(IEnumerable<Fault> faults)
    {
        foreach (var fault in faults)
        {
            error.WriteLine(fault);
        }

        return Exit.BadInput;
    }

    /// <summary>Reasons why sound input has no answer.</summary>
    public int NoAnswer(params IEnumerable<string> reasons)
    {
        foreach (var reason in reasons)
        {
            error.WriteLine(reason);
        }

        return Exit.NoAnswer;
    }

    /// <summary>The answer as JSON, or in words.</summary>
    public int Answer<T>(bool json, T answer, Action<T> inWords)
    {
        if (json)
        {
            Json(answer);
        }
        else
        {
            inWords(answer);
        }

        return Exit.Done;
    }
}
