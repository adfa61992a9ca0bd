using Evengrist.Records;
using Evengrist.Web.Api;
using Evengrist.Web.Face;
using Evengrist.Web.Security;
using Evengrist.Web.Sights.Dispatch;
using Evengrist.Web.Sights.Events;
using Evengrist.Web.Sights.Laboratory;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Sights.Packing;
using Evengrist.Web.Sights.Paying;
using Evengrist.Web.Sights.Traces;
using Evengrist.Web.Sights;
using Evengrist.Web.Sights.Trucks;
using Evengrist.Web.Visiting;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using NodaTime;

namespace Evengrist.Web.Start;

/// <summary>Puts the web app together.</summary>
public static class EvengristApp
{
    /// <summary>The app, not started yet. The mill is opened in the background once it starts.</summary>
    /// <param name="options">What was asked for.</param>
    /// <param name="open">Opens the mill; null for the mill that the options name.</param>
    /// <exception cref="StartRefusal">It may not listen where it was asked to.</exception>
    public static WebApplication Build(WebOptions options, Func<Action<Opening>, Mill>? open = null)
    {
        ArgumentNullException.ThrowIfNull(options);
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(EvengristApp).Assembly.GetName().Name, ContentRootPath = AppContext.BaseDirectory,
        });
        Listening.RefuseOtherSettings(builder.Configuration);
        builder.WebHost.UseUrls(Listening.Addresses(options.Urls ?? builder.Configuration["urls"]));
        builder.WebHost.UseStaticWebAssets();
        builder.BoundUploads();
        builder.Logging.SetMinimumLevel(LogLevel.Warning).AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        AddParts(builder.Services, options, new MillDoor(open ?? (tell => MillOpener.Open(options, SystemClock.Instance, tell))));

        var app = builder.Build();
        UseParts(app);
        return app;
    }

    private static void AddParts(IServiceCollection services, WebOptions options, MillDoor door)
    {
        services.AddSingleton<IClock>(SystemClock.Instance);
        services.AddSingleton(door);
        services.AddHostedService(s => s.GetRequiredService<MillDoor>());
        services.AddHttpContextAccessor();
        services.AddScoped<Visit>();
        services.AddSingleton<UploadShelf>();
        services.AddSingleton<Sights.Packing.PlanShelf>();
        services.AddSingleton<Sights.Packing.OrderShelf>();
        services.AddSingleton<Sights.Flow.MillTunings>();
        services.AddSingleton<WorkShelf>();
        services.AddSingleton<Sights.Season.YearDesk>();
        services.AddRazorComponents();
        services.AddProblemDetails(problems => problems.CustomizeProblemDetails = UnreadBody.Say);
        services.Configure<RouteHandlerOptions>(routes => routes.ThrowOnBadRequest = true);
        services.AddOpenApi(api => api.AddDocumentTransformer((document, _, _) =>
        {
            document.Info.Title = "Evengrist";
            document.Info.Description = "Questions about one mill. Masses are whole grams as they lie; the unit and the basis stand in every name.";
            return Task.CompletedTask;
        }));
        services.AddAntiforgery(forms =>
        {
            forms.Cookie.Name = "evengrist-form";
            forms.Cookie.SameSite = SameSiteMode.Strict;
            forms.SuppressXFrameOptionsHeader = true;
        });
        services.AddDataProtection().SetApplicationName("Evengrist")
            .PersistKeysToFileSystem(Directory.CreateDirectory(Path.Combine(options.DataFolder, "keys")));
        services.Configure<HostFilteringOptions>(hosts =>
        {
            hosts.AllowedHosts = ["localhost", "127.0.0.1", "[::1]"];
            hosts.AllowEmptyHosts = false;
        });
    }

    private static void UseParts(WebApplication app)
    {
        app.UseStrictHeaders();
        app.UseTroubleAnswers();
        app.UseUploadBound();
        app.UseStartingGate(app.Services.GetRequiredService<MillDoor>());
        app.UsePageLists();
        app.UseRouting();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapOpenApi();
        app.MapChoices();
        app.MapBinsApi();
        app.MapMixApi();
        app.MapTemperingApi();
        app.MapLabApi();
        app.MapMillingApi();
        app.MapStreamsApi();
        app.MapStorageApi();
        app.MapLedgerApi();
        app.MapListsApi();
        app.MapIntakeApi();
        app.MapSamplingApi();
        app.MapPayingApi();
        app.MapContentApi();
        app.MapLabelsApi();
        app.MapPackingHall();
        app.MapTracingApi();
        app.MapDispatchApi();
        app.MapReworkApi();
        app.MapEpcisApi();
        app.MapSeason();
        app.MapTraceFiles();
        app.MapDispatchFiles();
        app.MapRecallApi();
        app.MapRecallFiles();
        app.MapTicketFiles();
        app.MapCertificateFiles();
        app.MapInspectionFiles();
        app.MapLabelFiles();
        app.MapSendFiles();
        app.MapBakeFiles();
        app.MapPayingFiles();
        app.MapRazorComponents<App>();
    }
}
