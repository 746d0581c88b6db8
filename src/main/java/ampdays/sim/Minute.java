package ampdays.sim;

import ampdays.results.Limit;

/**
 * The bus of one step: a single reused object of plain numbers that the parts of the loop write and read. Powers are
 * means over the step. Currents into the bank are positive.
 */
final class Minute {
    int step;

    /** The loads' pattern in force. */
    int pattern;

    /** What the bank's state of charge leaves of it. */
    int leftPattern;

    double outsideC;
    double indoorHeatW;

    /** What the loads ask for: constant current, constant power (inverter input among it). */
    double askedA;

    double askedW;
    /** Power on the outlets behind the inverter, an air conditioner there among it. */
    double outletW;

    /** What the inverter asks for with it. */
    double inverterAskedW;

    /** What was measured in place of all that, asked for or not. */
    double measuredW;

    double coolingAskedW;

    /** What the air conditioner would have drawn, but it had no power or its own low-voltage cut-out held it off. */
    double coolingMissedW;

    /** Whether a fixed-speed compressor starts in this step; only then are the next three of this step. */
    boolean coolerStarts;

    /** What a start of the air conditioner asked beyond what inverter, bank or its own protection stands; 0 = nothing. */
    double startOutletW;

    double startBankA;
    double startSagV;

    double refrigeratorAskedW;

    /** What the sources can give at the bus. */
    double solarPossibleW;

    double solarCapA;

    /** Whether the panels give a current, held at the bus voltage, instead of a power (pulse-width controller). */
    boolean solarIsCurrent;

    /** That current before the controller's limit. */
    double solarHeldA;

    double shorePossibleW;
    double shoreCapA;
    double secondPossibleA;
    double secondSetPointV;
    double secondCableOhm;
    double factoryPossibleW;
    double factoryCapA;

    /** What the sources gave at the bus. */
    double solarW;

    double shoreW;
    double factoryW;
    double secondA;

    double busV;
    double bankA;

    /** Share of what was asked that was served, 0 to 1. */
    double servedShare;

    /** Whether the bank, not the sources, set the charging current. */
    boolean bankLimits;

    /** Whether the second alternator was held back by its set point behind the cable. */
    boolean secondRegulated;

    boolean factoryAtRating;
    boolean solarAtCap;

    double solarSourceW;
    double shoreSourceW;
    double factorySourceW;
    double factorySourceA;
    double secondSourceW;
    double inverterLossW;
    double curtailedW;
    double unservedW;
    double lossesW;
    double coolingW;
    double refrigeratorW;
    double loadsW;
    Limit ruling;

    /** Takes what the next step reads of the step before. */
    void goOnFrom(Minute before) {
        busV = before.busV;
        bankA = before.bankA;
        bankLimits = before.bankLimits;
        curtailedW = before.curtailedW;
    }
}
