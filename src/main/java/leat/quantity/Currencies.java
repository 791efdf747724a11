package leat.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * The currency codes that are understood. Source: ISO 4217, active codes of countries (from memory;
 * a test holds it against the JDK's list). The JDK's own list is not used: loading it is slow.
 */
public final class Currencies {
  private static final String CODES =
      "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BHD BIF BMD BND BOB BRL BSD BTN BWP"
          + " BYN BZD CAD CDF CHF CLP CNY COP CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP"
          + " GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR IQD IRR ISK JMD JOD JPY KES"
          + " KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP MRU"
          + " MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON"
          + " RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND"
          + " TOP TRY TTD TWD TZS UAH UGX USD UYU UZS VES VND VUV WST XAF XCD XOF XPF YER ZAR ZMW ZWL";

  private Currencies() {}

  /** Whether it is the code of a currency, in capitals. */
  public static boolean isCode(String text) {
    return text.length() == 3 && text.indexOf(' ') < 0 && CODES.indexOf(text) >= 0 && whole(text);
  }

  private static boolean whole(String text) {
    int at = CODES.indexOf(text);
    while (at >= 0) {
      if (at % 4 == 0) {
        return true;
      }
      at = CODES.indexOf(text, at + 1);
    }
    return false;
  }

  /** All codes, in alphabetical order. */
  public static List<String> codes() {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < CODES.length(); i += 4) {
      all.add(CODES.substring(i, i + 3));
    }
    return all;
  }

  /** The code of a sign that only one currency uses, or null. */
  static String ofSign(String sign) {
    switch (sign) {
      case "\u20ac":
        return "EUR";
      case "\u00a3":
        return "GBP";
      default:
        return null;
    }
  }

  /** Whether several currencies share the sign. */
  static boolean isSharedSign(String sign) {
    return sign.equals("$") || sign.equals("\u00a5");
  }
}
