namespace GlowMix.Readings.Files;

/// <summary>
/// The words of headers in the languages that instruments and people use: one list a meaning, words or their stems parted by
/// bars, in small letters; accents do not matter.
/// </summary>
internal static class HeaderVocabulary
{
    /// <summary>Wavelengths.</summary>
    public static readonly string[] Wavelength = Words(
        "wavelength|wave length|wavel|wl|wellenl|longueur d|longitud d|lunghezza d|comprimento de onda",
        "lungime de und|golflengte|vaglangd|bolgel|bylgjulengd|aallonpit|lainepik|bangos ilg|vilna gar",
        "dlugosc fal|vlnov|valna dul|valna duz|talasna du|valovna dol|hullamh|dalga boy|dalgaboy|panjang gelombang|buoc song",
        "длина волны|длины волн|длина волн|довжина хвил|дължина на вълн|таласна дуж|даужыня хвал|μηκος κυμ|אורך גל",
        "الطول الموجي|طول الموج|طول موج|ความยาวคลื่น|तरंग|波长|波長|파장"
    );

    /// <summary>A sign of wavelength, which stands for other things behind a letter: 'E(λ)'.</summary>
    public static readonly string[] Lambda = Words("lambda|λ");

    /// <summary>Places in a spectrum that are no wavelengths.</summary>
    public static readonly string[] OtherScale = Words(
        "wavenumber|wave number|wellenzahl|nombre d'onde|numero de onda|numero d'onda|golfgetal|vagtal|bolgetal|aaltoluku",
        "liczba falow|vlnocet|hullamszam|волновое чис|хвильове чис|波数|파수|kayser|cm-1|1/cm",
        "frequen|frekven|frekans|czestotliw|kmitocet|taajuus|частот|συχνοτητ|频率|頻率|周波数|진동수|주파수|hz|thz|phz",
        "photon energ|photonenerg|energie des photon|energia del fotone|energia del foton|энергия фотон|光子能量|ev"
    );

    /// <summary>Times.</summary>
    public static readonly string[] Time = Words(
        "time|zeit|temps|tiempo|tempo|timp|tijd|tid|czas|cas|ido|aika|laikas|laiks|aeg|vrijeme|zaman|dakika|saniye|thoi gian",
        "время|час|време|χρονος|זמן|الزمن|وقت|เวลา|时间|時間|时刻|時刻|시간|elapsed|duration|dauer|duree|minute|minut|second|sekund",
        "segund|секунд|минут|hour|stunde|heure|hora|clock|uhr|t|s|sec|min|h|hh:mm|h:mm|mm:ss|m:ss|min:s|分|秒"
    );

    /// <summary>Light from which the dark reading has been taken.</summary>
    public static readonly string[] Net = Words(
        "net|netto|corrected|korrigiert|corrig|minus|subtracted|bereinigt|difference|differenz|differen|neto|netta|nett",
        "less dark|without dark|dark removed|ohne dunkel|sans fond|sin fondo|senza fondo|korrigert|korrigerad|korjattu|gecorrigeerd",
        "skorygow|opraven|korrigalt|без фона|за вычетом|исправл|скоррект|чист|нетто|补正|補正|校正|修正|扣除|差引|보정|순"
    );

    /// <summary>Words that hold one of those and say the contrary.</summary>
    public static readonly string[] NotNet = Words(
        "uncorrected|unkorrigiert|not corrected|non corrig|不校正|未校正|未補正"
    );

    /// <summary>Light from which nothing has been taken.</summary>
    public static readonly string[] Raw = Words(
        "raw|roh|brut|brute|crudo|cruda|grezz|scope|uncorrected|unkorrigiert|bruto|ruw|surow|nyers|hrub|surov|raaka|sirov",
        "сыр|необработ|исходн|生データ|生信号|原始|원시|未校正|未補正|lamp on|led on|light on"
    );

    /// <summary>A dark reading.</summary>
    public static readonly string[] Dark = Words(
        "dark|background|bkg|bg|baseline|black|off|ambient|shutter closed|dunkel|untergrund|hintergrund|aus|ohne licht|ohne lampe",
        "umgebungslicht|noir|obscur|eteint|apagad|spent|fond|oscur|scuro|buio|fondo|escur|fundo|intuneric|donker|achtergrond|mork|morker|bakgrun",
        "baggrund|myrk|pime|tausta|tume|tams|tums|ciemn|tlo|tla|tmav|temn|tma|pozad|sotet|hatter|tamn|mrak|karanlik|arka plan|toi|nen",
        "темн|тьма|тъмн|тамн|фон|цемн|σκοτ|υποβαθρ|חושך|רקע|ظلام|مظلم|خلفية|มืด|暗|背景|本底|ダーク|バックグラウンド|암|다크|배경"
    );

    /// <summary>Words that hold one of those and are no dark reading.</summary>
    public static readonly string[] NotDark = Words("blackbody|black body|black-body");

    /// <summary>A mean of other columns.</summary>
    public static readonly string[] Mean = Words(
        "mean|average|averaged|avg|ave|mittel|moyen|media|median|promedio|gemiddeld|sredni|srednja|prumer|priemer|atlag|medel",
        "gjennomsnit|gennemsnit|keskiarvo|keskim|vidurkis|videj|keskmine|ortalama|medie|rata-rata|trung binh",
        "средн|середн|μεσ|ממוצע|متوسط|เฉลี่ย|平均|均值|평균"
    );

    /// <summary>A reading of a reference, or what should have been read.</summary>
    public static readonly string[] Reference = Words(
        "reference|referen|riferiment|ref|white|weiss|weiß|blanc|blanco|bianco|blank|planck|blackbody|black body|black-body|theor",
        "ideal|target|soll|эталон|опорн|параўн|参考|参比|参照|リファレンス|白板|기준|참조|wzorz"
    );

    /// <summary>A share of light.</summary>
    public static readonly string[] Share = Words(
        "transmi|reflect|reflex|reflekt|remission|透过率|透過率|反射率|пропускан|отражен|투과율|반사율|%t|%r"
    );

    /// <summary>A logarithm of a share of light.</summary>
    public static readonly string[] Logarithm = Words(
        "log|log10|lg|ln|db|dbm|decibel|dezibel|logarithm|logarit|absorbance|absorbanz|absorption|absorb|extinkt|extinction",
        "optical density|optische dichte|od|поглощ|логарифм|吸光度|吸収|흡광도|对数|対数"
    );

    /// <summary>What the eye makes of light, or its weights.</summary>
    public static readonly string[] Weighted = Words(
        "x_bar|y_bar|z_bar|xbar|ybar|zbar|x-bar|y-bar|z-bar|x bar|y bar|z bar|x̄|ȳ|z̄|cmf|observer|v(lambda)|v'(lambda)|v(λ)|v'(λ)|v′(λ)",
        "v_lambda|v_λ|vλ|vlambda|v lambda|photopic|scotopic|mesopic|melanop|weighted|gewichtet|pondere|lm/nm|lumen|lx/nm|lux/nm"
    );

    /// <summary>Something else: spread, temperature, flags.</summary>
    public static readonly string[] Aside = Words(
        "std|stdev|stddev|stabw|sd|s.d.|sem|rsd|cv|variance|varianz|sigma|σ|error|err|fehler|erreur|uncert|unsicher|incert|dev",
        "deviation|desv|abweichung|ecart|scart|standaardaf|afwijking|odchyl|szoras|avvik|hajonta|отклон|ско|погрешн|偏差|误差|誤差|편차",
        "rms|snr|flag|status|state|valid|saturat|satur|temperatur|temp.|°c|quality|±|date|datum|+/-|fecha|remark|comment|bemerkung",
        "note|notiz|fwhm|bandwidth|bandbreite|halbwert|cumulat|kumul|integral"
    );

    /// <summary>A running number.</summary>
    public static readonly string[] Index = Words(
        "index|pixel|pix|px|no|no.|nr|nr.|n°|n|#|kanal|channel|ch|canal|row|zeile|ligne|fila|riga|id|num|number|nummer|punkt",
        "point|point no|lfd|line|sample no|messpunkt|poradi|sorszam|номер|№|п/п|пиксел|序号|番号|編號|编号|번호|像素|画素|픽셀"
    );

    /// <summary>Light.</summary>
    public static readonly string[] Light = Words(
        "irradiance|intensi|intenzi|power|leistung|puissance|potenc|potenz|vermogen|moc|teho|teljesitm|guc|effekt|spectrum|spektr",
        "spectre|spectral|espectr|spettr|signal|signaal|signaali|senal|sinal|segnal|sygnal|jel|sinyal|semnal|sample|probe|proba|probk",
        "prov|prove|nayte|muestra|amostra|campion|echantillon|monster|vzorek|vzork|minta|uzorak|uzorec|ornek|mau|count|cts|cps",
        "conteg|cuenta|contagem|coups|impuls|zliczen|beutes|sayim|zahlrate|value|wert|valeur|valor|valore|waarde|wartosc|hodnot|ertek",
        "arvo|varde|vaerdi|deger|bestrahlung|radian|strahl|stral|flux|emission|relative|relativ|amplitude|licht|light|lumiere|luz|luce",
        "swiatlo|svetlo|feny|valo|ljus|lys|isik|energy|energi|eclairement|irradian|luminan|leuchtdichte|illuminan|beleuchtung|lux|lx",
        "mcd|cd/m|w/m|w m|uw|µw|μw|mw|a.u.|arb|adc|adu|dn|y|i|e|luminosi|helligkeit|brightness|glow|lamp|led|leuchte|natezen|ozar|zareni",
        "мощност|потужн|интенсив|интензив|інтенсив|образ|проба|зразок|отсчет|відлік|импульс|імпульс|сигнал|облучен|яркост|энерг|спектр",
        "свет|δειγμ|ενταση|σημα|דגימה|עוצמה|عينة|شدة|ตัวอย่าง|ความเข้ม|cuong do",
        "强度|強度|値|值|样品|样本|樣品|試料|サンプル|カウント|信号|信號|スペクトル|光谱|光譜|辐照|輻照|放射|輝度|照度|亮度|计数|計數|功率|能量",
        "発光|相対|相对|出力|시료|샘플|강도|세기|카운트|신호|스펙트럼|휘도|조도|출력|복사|밝기"
    );

    /// <summary>All of them.</summary>
    public static IEnumerable<string> All =>
        new[]
        {
            Wavelength,
            Lambda,
            OtherScale,
            Time,
            Net,
            NotNet,
            Raw,
            Dark,
            NotDark,
            Mean,
            Reference,
            Share,
            Logarithm,
            Weighted,
            Aside,
            Index,
            Light,
        }
            .SelectMany(list => list)
            .Distinct();

    /// <summary>Light of which the instrument's response has been taken out.</summary>
    public static readonly string[] Power = Words(
        "irradianc|irradiaz|irradianz|bestrahlung|eclairement|radiance|strahldichte|strahlung|power|leistung|puissance|potencia|potenza",
        "vermogen|облучен|мощност|放射照度|放射|辐照|輻照|功率|복사"
    );

    private static string[] Words(params string[] lines) =>
        [.. string.Join('|', lines).Split('|').Select(HeaderFold.Of)];
}
