using System.Globalization;

namespace Watersown.Records.Files.Sheets;

/// <summary>
/// The look of a sheet as a web page: the sizes of the PDF, in fonts of the same widths where they are there. On a narrow
/// screen it flows in one column.
/// </summary>
internal static class HtmlStyle
{
    public static string Css { get; } = string.Create(CultureInfo.InvariantCulture, $$$"""
        *{box-sizing:border-box;margin:0;padding:0}
        @page{size:letter;margin:{{{Paper.Margin}}}pt}
        html{-webkit-text-size-adjust:100%}
        body{background:#fff;color:#000;font:{{{Paper.Body}}}pt/{{{Paper.BodyLine}}}pt "Liberation Sans",Arimo,Arial,Helvetica,sans-serif;font-kerning:none;font-variant-ligatures:none}
        .page{width:{{{Paper.Inner}}}pt;display:flex;flex-direction:column;gap:{{{Paper.Gap}}}pt;break-after:page}
        .page:last-child{break-after:auto}
        header{display:flex;justify-content:space-between;gap:{{{Paper.ColumnGap}}}pt;border-bottom:4.5pt double #000;padding-bottom:3.5pt}
        .title,.figures .big,h2,.value{font-family:"Liberation Serif",Tinos,"Times New Roman",Times,serif;font-weight:700}
        .title{line-height:1.1}
        .title span{font:.65em "Liberation Sans",Arimo,Arial,Helvetica,sans-serif}
        .lead{font-weight:700;font-size:{{{HeadLayout.LeadSize}}}pt;line-height:{{{HeadLayout.LeadLine}}}pt;margin-top:2pt}
        .corner{text-align:right;padding-top:2pt;flex-shrink:0;max-width:42%}
        h2{font-size:{{{Paper.Heading}}}pt;line-height:{{{Paper.HeadingLine}}}pt}
        .banner{border:2pt solid #000;padding:{{{BlockLayout.BannerTop - 2}}}pt {{{BlockLayout.BannerSide - 2}}}pt}
        .alarm{border:{{{BlockLayout.AlarmFrame}}}pt solid #000;padding:{{{BlockLayout.AlarmTop - BlockLayout.AlarmFrame}}}pt {{{BlockLayout.AlarmSide - BlockLayout.AlarmFrame}}}pt}
        .alarm h2{font:700 {{{BlockLayout.Shout}}}pt/{{{BlockLayout.ShoutLine}}}pt "Liberation Sans",Arimo,Arial,Helvetica,sans-serif}
        .alarm li{font-weight:700;font-size:{{{BlockLayout.AlarmList}}}pt;line-height:{{{BlockLayout.AlarmListLine}}}pt}
        ul{list-style:none}
        .figures{display:flex}
        .figures p{border:1.5pt solid #000;padding:0 {{{FiguresLayout.Side - 1.5}}}pt {{{FiguresLayout.Bottom - 1.5}}}pt}
        .figures .heavy{border-width:4pt;padding:0 {{{FiguresLayout.Side - 4}}}pt {{{FiguresLayout.Bottom - 4}}}pt}
        .figures .big{display:block;font-size:{{{FiguresLayout.Size}}}pt;line-height:{{{FiguresLayout.NumberLine - 1.5}}}pt}
        .figures .heavy .big{line-height:{{{FiguresLayout.NumberLine - 4}}}pt}
        table{border-collapse:collapse;table-layout:fixed}
        th{font-weight:400;text-align:left}
        .facts{width:100%}
        .facts tr{border-bottom:{{{Paper.Hairline}}}pt solid #000}
        .facts th,.facts td{padding:{{{FactsLayout.RowTop}}}pt 0;vertical-align:middle;overflow-wrap:anywhere}
        .facts th{padding-right:{{{Paper.CellSide}}}pt}
        .facts .value{font-size:{{{FactsLayout.Value}}}pt;line-height:{{{FactsLayout.ValueLine}}}pt;padding:{{{FactsLayout.RowTop}}}pt {{{Paper.CellSide}}}pt}
        .facts .note{font-size:{{{Paper.Small}}}pt;line-height:{{{Paper.SmallLine}}}pt}
        .grid th,.grid td{padding:{{{Paper.CellTop}}}pt {{{Paper.CellSide}}}pt;vertical-align:middle;overflow-wrap:anywhere}
        .grid thead th{font-size:{{{Paper.Small}}}pt;line-height:{{{Paper.SmallLine}}}pt;vertical-align:bottom}
        .grid thead tr{border-bottom:{{{Paper.Line}}}pt solid #000}
        .grid tbody tr{border-bottom:{{{Paper.Hairline}}}pt solid #000;break-inside:avoid}
        .grid .roomy>*{height:{{{Paper.BoxRow}}}pt}
        .grid .right{text-align:right}
        .grid .center{text-align:center}
        .folds,.side{display:flex;align-items:flex-start}
        .side{gap:{{{Paper.ColumnGap}}}pt}
        .side>div{display:flex;flex-direction:column;gap:{{{Paper.Gap}}}pt;min-width:0}
        .box{display:inline-block;width:{{{Paper.Box}}}pt;height:{{{Paper.Box}}}pt;border:1.5pt solid #000;vertical-align:middle}
        .ticks{display:flex;flex-wrap:wrap;column-gap:{{{TicksLayout.Between}}}pt}
        .ticks li{display:flex;align-items:center;gap:4pt;overflow-wrap:anywhere;min-height:{{{TicksLayout.Row}}}pt}
        .ticks .line{border-bottom:.75pt solid #000;height:11pt}
        .goes-on{text-align:right}
        svg{display:block;max-width:100%;font-family:"Liberation Sans",Arimo,Arial,Helvetica,sans-serif}
        .sr{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
        @media screen{.page{margin:{{{Paper.Margin}}}pt auto}}
        @media screen and (max-width:620pt){.page{width:auto;margin:12pt}header,.side,.folds{flex-wrap:wrap}.side>div,.grid,.figures p{width:100%!important}table{table-layout:auto}col{width:auto!important}.page{overflow-x:auto}.grid th,.grid td,.facts th,.facts td{overflow-wrap:break-word}.corner{max-width:none}}

        """);
}
