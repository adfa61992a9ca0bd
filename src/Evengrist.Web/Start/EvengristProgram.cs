namespace Evengrist.Web.Start;

/// <summary>The program from its command line to its end.</summary>
public static class EvengristProgram
{
    /// <summary>Runs the web app until it is stopped. Exit status 0 done, 2 bad input.</summary>
    public static async Task<int> RunAsync(string[] args, TextWriter output, TextWriter errors)
    {
        WebApplication app;
        try
        {
            var options = WebOptions.Read(args);
            if (options.Help)
            {
                await output.WriteLineAsync(WebOptions.Usage);
                return 0;
            }

            app = EvengristApp.Build(options);
        }
        catch (StartRefusal refusal)
        {
            await errors.WriteLineAsync(refusal.Message);
            return 2;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            await errors.WriteLineAsync($"The data folder cannot be used: {trouble.Message} Give another with --data PATH.");
            return 2;
        }

        await using (app)
        {
            try
            {
                await app.StartAsync();
            }
            catch (IOException trouble)
            {
                await errors.WriteLineAsync($"The address cannot be used: {trouble.Message} Give another with --urls http://127.0.0.1:PORT.");
                return 2;
            }

            await output.WriteLineAsync($"Evengrist listens on {app.Urls.First()}");
            await app.WaitForShutdownAsync();
        }

        return 0;
    }
}
