using System.Text;
using System.Xml.Linq;

namespace GlowMix.Console.Reports;

/// <summary>
/// A page to print or to send: one file that needs no network and no script. It begins with what the piece looks like and
/// what that means; figures, doubts and sources follow.
/// </summary>
internal static class ReportPage
{
    private const string StyleSheet = "report.css";

    /// <summary>The page of some recipes, at least one.</summary>
    /// <param name="reports">In the order asked for.</param>
    /// <param name="isShort">For a reader who neither mixes nor pours: no recipe, no figures beyond the sentences.</param>
    public static string Of(IReadOnlyList<RecipeReport> reports, bool isShort)
    {
        var body = Markup.Of("main");
        if (reports.Count == 1)
        {
            AddOne(body, reports[0], isShort);
        }
        else
        {
            AddSeveral(body, reports, isShort);
        }
        string title = string.Join(", ", reports.Select(r => r.Name));
        var page = new StringBuilder(
            "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        );
        page.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append(Markup.Written(Markup.Of("title", title))).Append('\n');
        page.Append("<style>\n").Append(Style()).Append("</style>\n</head>\n<body>\n");
        page.Append(Markup.Written(body)).Append("\n</body>\n</html>\n");
        return page.ToString();
    }

    private static void AddOne(XElement body, RecipeReport report, bool isShort)
    {
        var sections = new ReportSections(report, number: 1);
        body.Add(
            Markup.Of(
                "header",
                Markup.Of("h1", report.Name),
                isShort ? null : Markup.Of("p", report.Prediction.Recipe)
            ),
            sections.Summary(),
            Markup.Of("p", Markup.With("class", "aside"), StripPicture.OfScreens)
        );
        body.Add(isShort ? Short(sections) : InFull(sections));
    }

    private static void AddSeveral(XElement body, IReadOnlyList<RecipeReport> reports, bool isShort)
    {
        ReportSections[] all = [.. reports.Select((report, i) => new ReportSections(report, i + 1))];
        body.Add(Markup.Of("header", Markup.Of("h1", $"{reports.Count} pieces, side by side")));
        body.Add(
            Markup.Of(
                "div",
                Markup.With("class", "beside"),
                reports
                    .Select(
                        (report, i) =>
                            Markup.Of("section", Markup.Of("h2", report.Name), all[i].Summary().ToArray())
                    )
                    .ToArray()
            )
        );
        body.Add(Markup.Of("p", Markup.With("class", "aside"), StripPicture.OfScreens));
        if (!isShort)
        {
            body.Add(ComparedFigures.Of(reports));
        }
        for (int i = 0; i < all.Length; i++)
        {
            body.Add(
                Markup.Of(
                    "article",
                    Markup.Of(
                        "header",
                        Markup.Of("h1", reports[i].Name),
                        isShort ? null : Markup.Of("p", reports[i].Prediction.Recipe)
                    ),
                    (isShort ? Short(all[i]) : InFull(all[i])).ToArray<object?>()
                )
            );
        }
    }

    private static IEnumerable<XElement?> Short(ReportSections sections) =>
        [sections.Room(), sections.CautionsOfUse()];

    private static IEnumerable<XElement?> InFull(ReportSections sections) =>
        [
            sections.Lit(),
            sections.Dark(),
            sections.Along(),
            sections.Targets(),
            sections.Bench(),
            sections.Markings(),
            sections.Doubt(),
            sections.Sources(),
        ];

    private static string Style()
    {
        using var stream = typeof(ReportPage).Assembly.GetManifestResourceStream(StyleSheet)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
