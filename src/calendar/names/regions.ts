/** The regions of the world, and how their weeks begin. Where none is listed: on Monday, and 1 day makes week 1.
 * Made from CLDR 48.2.0 by a script beside it; Unicode License V3, see LICENSE. */
// biome-ignore-all format: one line for each entry, as its script writes it

/** Every region's code, 001 for the whole world. */
export const REGIONS = "001 AC AD AE AF AG AI AL AM AN AO AQ AR AS AT AU AW AX AZ BA BB BD BE BF BG BH BI BJ BL BM BN BO BQ BR BS BT BV BW BY BZ CA CC CD CF CG CH CI CK CL CM CN CO CP CQ CR CU CV CW CX CY CZ DE DG DJ DK DM DO DZ EA EC EE EG EH ER ES ET FI FJ FK FM FO FR GA GB GD GE GF GG GH GI GL GM GN GP GQ GR GS GT GU GW GY HK HM HN HR HT HU IC ID IE IL IM IN IO IQ IR IS IT JE JM JO JP KE KG KH KI KM KN KP KR KW KY KZ LA LB LC LI LK LR LS LT LU LV LY MA MC MD ME MF MG MH MK ML MM MN MO MP MQ MR MS MT MU MV MW MX MY MZ NA NC NE NF NG NI NL NO NP NR NU NZ OM PA PE PF PG PH PK PL PM PN PR PS PT PW PY QA RE RO RS RU RW SA SB SC SD SE SG SH SI SJ SK SL SM SN SO SR SS ST SV SX SY SZ TA TC TD TF TG TH TJ TK TL TM TN TO TR TT TV TW TZ UA UG UM US UY UZ VA VC VE VG VI VN VU WF WS XK YE YT ZA ZM ZW";

export const BEGIN_ON_SUNDAY = "AG AS BD BR BS BT BW BZ CA CO DM DO ET GT GU HK HN ID IL IN IS JM JP KE KH KR LA MH MM MO MT MX MZ NI NP PA PE PH PK PR PT PY SA SG SV TH TT TW UM US VE VI WS YE ZA ZW";
export const BEGIN_ON_SATURDAY = "AF BH DJ DZ EG IQ IR JO KW LY OM QA SD SY";
export const BEGIN_ON_FRIDAY = "MV";

/** Where week 1 is the first with four days in the year. */
export const FOUR_DAYS_IN_WEEK_ONE = "AD AN AT AX BE BG CH CZ DE DK EE ES FI FJ FO FR GB GF GG GI GP GR HU IE IM IS IT JE LI LT LU MC MQ NL NO PL PT RE RU SE SJ SK SM VA";

/** Codes that are no longer used, or never were official, and the one to use. */
export const RENAMED_REGIONS: Readonly<Record<string, string>> = {
  BU: "MM", CT: "KI", DD: "DE", DY: "BJ", FX: "FR", HV: "BF", JT: "UM", MI: "UM", NH: "VU", NQ: "AQ", PU: "UM", PZ: "PA", RH: "ZW", TP: "TL", UK: "GB", VD: "VN", WK: "UM", YD: "YE", ZR: "CD",
};
