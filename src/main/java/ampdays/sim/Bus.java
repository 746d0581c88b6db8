package ampdays.sim;

import ampdays.battery.BankPhysics;
import ampdays.battery.Battery;

/**
 * Shares one step's power between sources, loads and bank, in closed form so that limits hold exactly: solar first, then
 * shore, second alternator, factory alternator.
 */
final class Bus {
    private Bus() {}

    static void solve(Minute m, Battery bank) {
        share(m, bank);
        if (bank.trips(m.bankLimits, m.servedShare < 1)) {
            share(m, bank);
        }
    }

    private static void share(Minute m, Battery bank) {
        m.servedShare = 1;
        // none is below 0, so one comparison stands for four
        boolean anySource = m.solarPossibleW + m.secondPossibleA + m.factoryPossibleW + m.shorePossibleW > 0;
        if (!anySource) {
            drawOnly(m, bank);
        } else if (!fillsBank(m, bank)) {
            giveAll(m, bank);
        }
    }

    /** When no source gives anything. */
    private static void drawOnly(Minute m, Battery bank) {
        m.bankLimits = false;
        m.secondRegulated = false;
        double busV = BankPhysics.busV(bank.emfV(), bank.dischargeOhm(), -m.askedA, -m.askedW);
        m.bankA = -m.askedA - m.askedW / busV;
        if (!(m.bankA >= -bank.dischargeMaxA())) {
            shed(m, bank);
            return;
        }
        m.busV = busV;
        m.solarW = 0;
        m.shoreW = 0;
        m.secondA = 0;
        m.factoryW = 0;
        m.solarAtCap = m.solarIsCurrent;
        m.factoryAtRating = false;
    }

    /** When the sources can give more than the bank and the loads take: the bank's limit sets the voltage. */
    private static boolean fillsBank(Minute m, Battery bank) {
        double mostA = bank.chargeMaxA();
        double busV = bank.emfV() + bank.chargeOhm() * mostA;
        double room = busV * (mostA + m.askedA) + m.askedW;
        double solarW = solarW(m, busV);
        double shoreW = capped(m.shorePossibleW, m.shoreCapA, busV);
        double secondW = busV * secondA(m, busV);
        double factoryW = capped(m.factoryPossibleW, m.factoryCapA, busV);
        if (solarW + shoreW + secondW + factoryW < room) {
            return false;
        }
        m.bankLimits = true;
        m.secondRegulated = false;
        m.busV = busV;
        m.bankA = mostA;
        m.solarW = solarW < room ? solarW : room;
        room -= m.solarW;
        m.shoreW = shoreW < room ? shoreW : room;
        room -= m.shoreW;
        secondW = secondW < room ? secondW : room;
        m.secondA = secondW / busV;
        room -= secondW;
        m.factoryW = factoryW < room ? factoryW : room;
        m.solarAtCap = false;
        m.factoryAtRating = false;
        return true;
    }

    /** When the bank takes all that the sources can give, or makes up for what they lack. */
    private static void giveAll(Minute m, Battery bank) {
        m.bankLimits = false;
        boolean solarAtCap = m.solarIsCurrent;
        boolean shoreAtCap = false;
        boolean factoryAtCap = false;
        boolean again = true;
        while (again) {
            double currentA = -m.askedA
                    + (solarAtCap ? m.solarCapA : 0)
                    + (shoreAtCap ? m.shoreCapA : 0)
                    + (factoryAtCap ? m.factoryCapA : 0);
            double powerW = -m.askedW
                    + (solarAtCap ? 0 : m.solarPossibleW)
                    + (shoreAtCap ? 0 : m.shorePossibleW)
                    + (factoryAtCap ? 0 : m.factoryPossibleW);
            double busV = withSecond(m, bank, currentA, powerW);
            m.bankA = currentA + m.secondA + powerW / busV;
            if (!(m.bankA >= -bank.dischargeMaxA())) {
                shed(m, bank);
                return;
            }
            m.busV = busV;
            again = false;
            if (!solarAtCap && m.solarPossibleW > m.solarCapA * busV) {
                solarAtCap = true;
                again = true;
            }
            if (!shoreAtCap && m.shorePossibleW > m.shoreCapA * busV) {
                shoreAtCap = true;
                again = true;
            }
            if (!factoryAtCap && m.factoryPossibleW > m.factoryCapA * busV) {
                factoryAtCap = true;
                again = true;
            }
        }
        m.solarW = solarAtCap ? m.solarCapA * m.busV : m.solarPossibleW;
        m.shoreW = shoreAtCap ? m.shoreCapA * m.busV : m.shorePossibleW;
        m.factoryW = factoryAtCap ? m.factoryCapA * m.busV : m.factoryPossibleW;
        m.solarAtCap = solarAtCap;
        m.factoryAtRating = factoryAtCap;
    }

    /** Bus voltage with the second alternator's current, which its set point may hold back; sets that current. */
    private static double withSecond(Minute m, Battery bank, double currentA, double powerW) {
        double emfV = bank.emfV();
        m.secondA = m.secondPossibleA;
        boolean charges = (currentA + m.secondA) * emfV + powerW > 0;
        double ohm = charges ? bank.chargeOhm() : bank.dischargeOhm();
        double busV = BankPhysics.busV(emfV, ohm, currentA + m.secondA, powerW);
        m.secondRegulated = m.secondA > 0 && busV + m.secondA * m.secondCableOhm > m.secondSetPointV;
        if (m.secondRegulated) {
            busV = BankPhysics.regulatedBusV(emfV, ohm, currentA, powerW, m.secondSetPointV, m.secondCableOhm);
            if (charges && busV < emfV) {
                ohm = bank.dischargeOhm();
                busV = BankPhysics.regulatedBusV(emfV, ohm, currentA, powerW, m.secondSetPointV, m.secondCableOhm);
            }
            m.secondA = (m.secondSetPointV - busV) / m.secondCableOhm;
            if (m.secondA < 0) {
                m.secondA = 0;
                busV = BankPhysics.busV(emfV, ohm, currentA, powerW);
            }
        }
        return busV;
    }

    /** When the bank cannot make up for what the sources lack: every load gets the same share. */
    private static void shed(Minute m, Battery bank) {
        double mostA = bank.dischargeMaxA();
        double busV = bank.emfV() - bank.dischargeOhm() * mostA;
        m.busV = busV;
        m.bankA = -mostA;
        m.solarW = solarW(m, busV);
        m.shoreW = capped(m.shorePossibleW, m.shoreCapA, busV);
        m.factoryW = capped(m.factoryPossibleW, m.factoryCapA, busV);
        m.secondA = secondA(m, busV);
        m.secondRegulated = m.secondA < m.secondPossibleA;
        m.solarAtCap = m.solarIsCurrent || m.solarW < m.solarPossibleW;
        m.factoryAtRating = m.factoryW < m.factoryPossibleW;
        double availableW = m.solarW + m.shoreW + m.factoryW + busV * (m.secondA + mostA);
        m.servedShare = availableW / (m.askedW + busV * m.askedA);
    }

    private static double solarW(Minute m, double busV) {
        return m.solarIsCurrent ? m.solarCapA * busV : capped(m.solarPossibleW, m.solarCapA, busV);
    }

    private static double capped(double possibleW, double capA, double busV) {
        double capW = capA * busV;
        return possibleW < capW ? possibleW : capW;
    }

    private static double secondA(Minute m, double busV) {
        double roomA = m.secondPossibleA > 0 ? (m.secondSetPointV - busV) / m.secondCableOhm : 0;
        double currentA = roomA < m.secondPossibleA ? roomA : m.secondPossibleA;
        return currentA > 0 ? currentA : 0;
    }
}
