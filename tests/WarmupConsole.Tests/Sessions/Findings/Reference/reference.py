"""Reference values for the estimates of findings, by other means than the program's.

Needs Python 3 and mpmath (1.3.0 was used); prints estimates.csv. Quantiles of the Beta distribution are found by bisection on mpmath's
regularised incomplete beta function with 40 digits; the stratified test is summed with exact fractions.
"""
from fractions import Fraction
from math import comb

from mpmath import betainc, mp, mpf

mp.dps = 40


def quantile(a, b, p):
    low, high = mpf(0), mpf(1)
    for _ in range(120):
        middle = (low + high) / 2
        if betainc(a, b, 0, middle, regularized=True) < p:
            low = middle
        else:
            high = middle
    return low


def jeffreys(marked, exposed):
    a, b = mpf(marked) + mpf("0.5"), mpf(exposed) - mpf(marked) + mpf("0.5")
    low = mpf(0) if marked == 0 else quantile(a, b, mpf("0.05"))
    high = mpf(1) if marked == exposed else quantile(a, b, mpf("0.95"))
    return low, high


def stratified(strata):
    """P(sum >= seen) for independent hypergeometric strata (size, exposed, marked, marked and exposed)."""
    sums = {0: Fraction(1)}
    for size, exposed, marked, _ in strata:
        longer = {}
        for total, chance in sums.items():
            for hits in range(max(0, marked - (size - exposed)), min(marked, exposed) + 1):
                term = Fraction(comb(exposed, hits) * comb(size - exposed, marked - hits), comb(size, marked))
                longer[total + hits] = longer.get(total + hits, 0) + chance * term
        sums = longer
    seen = sum(stratum[3] for stratum in strata)
    return float(sum(chance for total, chance in sums.items() if total >= seen))


print("what,input,low,high")
for marked, exposed in [(0, 10), (1, 10), (3, 30), (12, 36), (20, 20), (40, 1000)]:
    low, high = jeffreys(marked, exposed)
    print(f"jeffreys,{marked}/{exposed},{mp.nstr(low, 12)},{mp.nstr(high, 12)}")
for name, strata in {
    "6-3-2-2": [(6, 3, 2, 2)],
    # More marked than there are unexposed rungs: some counts cannot be.
    "8-6-5-5 9-7-4-4": [(8, 6, 5, 5), (9, 7, 4, 4)],
    "6-3-2-2 8-4-3-2 10-2-1-1": [(6, 3, 2, 2), (8, 4, 3, 2), (10, 2, 1, 1)],
    # Mantel (1963): rabbits given penicillin at once (exposed) or later, cured (marked) or not, at five doses.
    "11-6-0-0 12-6-3-3 12-6-8-6 12-6-11-5 7-2-7-2": [(11, 6, 0, 0), (12, 6, 3, 3), (12, 6, 8, 6), (12, 6, 11, 5), (7, 2, 7, 2)],
}.items():
    print(f"stratified,{name},{stratified(strata):.12g},")
