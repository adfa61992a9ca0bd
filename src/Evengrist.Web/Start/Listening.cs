using System.Net;
using System.Net.Sockets;

namespace Evengrist.Web.Start;

/// <summary>Where the web app may listen: on this machine alone, until it knows accounts.</summary>
public static class Listening
{
    /// <summary>The port taken when it is free; the next free one otherwise.</summary>
    public const int FirstPort = 5180;

    private const int PortsTried = 40;

    /// <summary>The addresses to listen on: what was asked, if it is loopback, or the first free port of ours.</summary>
    /// <param name="asked">Addresses parted by semicolons; null or empty for the default.</param>
    /// <exception cref="StartRefusal">An address is not loopback, not http, or no address at all.</exception>
    public static string[] Addresses(string? asked)
    {
        var urls = (asked ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return urls.Length == 0 ? [$"http://127.0.0.1:{FreePort()}"] : [.. urls.Select(Checked)];
    }

    /// <summary>Refuses settings that would open the app to other machines past <see cref="Addresses"/>.</summary>
    /// <exception cref="StartRefusal">Ports without an address, or endpoints of the server's own settings, are given.</exception>
    public static void RefuseOtherSettings(IConfiguration configuration)
    {
        foreach (var key in (string[])["http_ports", "https_ports"])
        {
            if (!string.IsNullOrWhiteSpace(configuration[key]))
            {
                throw Refuse($"{key}={configuration[key]}");
            }
        }

        if (configuration.GetSection("Kestrel:Endpoints").GetChildren().FirstOrDefault() is { } endpoint)
        {
            throw Refuse($"Kestrel:Endpoints:{endpoint.Key}={endpoint["Url"]}");
        }
    }

    private static string Checked(string url)
    {
        if (!Uri.TryCreate(url, UriKind.Absolute, out var address) || address.Scheme != Uri.UriSchemeHttp || address.PathAndQuery != "/")
        {
            throw Refuse(url);
        }

        var here = address.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
            || (IPAddress.TryParse(address.Host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
        return here ? url : throw Refuse(url);
    }

    private static StartRefusal Refuse(string what) => new(
        $"Evengrist does not listen on \"{what}\". It knows no accounts yet, so it serves this machine alone: "
        + $"leave the address out, or give a loopback one such as http://127.0.0.1:{FirstPort}.");

    private static int FreePort()
    {
        for (var port = FirstPort; port < FirstPort + PortsTried; port++)
        {
            using var probe = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
            try
            {
                probe.Bind(new IPEndPoint(IPAddress.Loopback, port));
                return port;
            }
            catch (SocketException)
            {
                continue;
            }
        }

        throw new StartRefusal($"No port from {FirstPort} to {FirstPort + PortsTried - 1} is free. Give one with --urls http://127.0.0.1:PORT.");
    }
}
