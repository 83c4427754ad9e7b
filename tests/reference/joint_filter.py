#!/usr/bin/python3
"""Reference values for the joint filter and smoother, from an independent implementation.

Writes joint_filter.txt beside itself. Needs Debian's python3-statsmodels (Kalman filter and smoother of
statsmodels.tsa.statespace) and python3-scipy. Nothing is shared with the program: the equations of
src/estimate/model.md are turned into matrices here by matrix exponentials (Van Loan, IEEE Trans. Autom. Control 23,
1978) where the program uses closed forms.
"""
import datetime
import math
import pathlib
import random

import numpy as np
from scipy.linalg import expm
from statsmodels.tsa.statespace.kalman_smoother import KalmanSmoother

FLOW_SD, FLOW_DAYS = 0.8, 11.0
HIVE_SD, HIVE_DAYS = 0.3, 25.0
LEVEL_SD, LEVEL_DAYS = 0.35, 70.0
PEAK, DEARTH = 0.4, -0.1
WOBBLE = 0.25
SEASON = ((4, 1), (9, 1))
START = datetime.date(2026, 5, 4)
GAPS = [7, 10, 14, 3, 7, 9, 21, 7, 5, 12]


def season_height(day):
    first = datetime.date(day.year, *SEASON[0])
    last = datetime.date(day.year, *SEASON[1])
    part = (day - first).days / (last - first).days
    return math.sqrt(math.sin(math.pi * part)) if 0 <= part < 1 else 0.0


def integrated(days, memory, sd):
    """(value, integral) of dx = -x/memory dt + sd sqrt(2/memory) dW over `days`: transition and covariance."""
    A = np.array([[-1 / memory, 0.0], [1.0, 0.0]])
    L = np.diag([2 * sd * sd / memory, 0.0])
    M = np.zeros((4, 4))
    M[:2, :2], M[:2, 2:], M[2:, 2:] = -A, L, A.T
    E = expm(M * days)
    F = E[2:, 2:].T
    return F, F @ E[:2, 2:]


def step(day, days, hives):
    n = 2 + 2 * hives                      # flow, level, then (strength, honey) of each hive
    middle = day + datetime.timedelta(days=days // 2)
    height = season_height(middle)
    mu = DEARTH + (PEAK - DEARTH) * height
    F, Q = integrated(days, FLOW_DAYS, FLOW_SD * (0.25 + 0.75 * height))
    G, R = integrated(days, HIVE_DAYS, HIVE_SD)
    T, C, V = np.zeros((n, n)), np.zeros(n), np.zeros((n, n))
    kept = math.exp(-days / LEVEL_DAYS)
    T[1, 1], V[1, 1] = kept, LEVEL_SD ** 2 * (1 - kept ** 2)
    T[0, 0], T[0, 1], C[0], V[0, 0] = F[0, 0], 1 - F[0, 0], (1 - F[0, 0]) * mu, Q[0, 0]
    for i in range(hives):
        a, h = 2 + 2 * i, 3 + 2 * i
        T[a, a], V[a, a] = G[0, 0], R[0, 0]
        T[h, h], T[h, 0], T[h, 1], T[h, a] = 1, F[1, 0], days - F[1, 0], G[1, 0]
        C[h] = (days - F[1, 0]) * mu
        V[h, 0] = V[0, h] = Q[0, 1]
        V[a, h] = V[h, a] = R[0, 1]
        for j in range(hives):
            V[h, 3 + 2 * j] = Q[1, 1]      # all hives share what the yard brought in
        V[h, h] += R[1, 1] + WOBBLE ** 2 * days + 1e-6 * days
    return T, C, V


def run(hives, seed, out):
    dice = random.Random(seed)
    n, periods = 2 + 2 * hives, len(GAPS) + 1
    days = [START]
    for gap in GAPS:
        days.append(days[-1] + datetime.timedelta(days=gap))
    honey = [5.0] * hives
    reads = np.full((hives, periods), np.nan)
    errors = [0.9 + 0.1 * (i % 5) for i in range(hives)]
    for t in range(periods):
        for i in range(hives):
            if t > 0:
                honey[i] += dice.uniform(-1, 12)
            if dice.random() < 0.7:
                reads[i, t] = round(honey[i] + dice.gauss(0, errors[i]), 2)
    reads[:, 4] = np.nan                   # a visit at which nothing was noted
    k = KalmanSmoother(k_endog=hives, k_states=n, k_posdef=n)
    k.bind(np.ascontiguousarray(reads.T))
    Z = np.zeros((hives, n))
    for i in range(hives):
        Z[i, 3 + 2 * i] = 1
    k['design'], k['obs_cov'], k['selection'] = Z, np.diag(np.square(errors)), np.eye(n)
    T, C, V = zip(*[step(days[t], GAPS[t], hives) if t < len(GAPS) else (np.eye(n), np.zeros(n), np.eye(n))
                    for t in range(periods)])
    k['transition'], k['state_intercept'] = np.stack(T, axis=2), np.stack(C, axis=1)
    k['state_cov'] = np.stack(V, axis=2)
    P = np.zeros((n, n))
    P[0, 0], P[1, 1], P[0, 1], P[1, 0] = 0.6, 0.1225, 0.1, 0.1
    for i in range(hives):
        P[2 + 2 * i, 2 + 2 * i], P[3 + 2 * i, 3 + 2 * i] = HIVE_SD ** 2, 1.5
    x = np.zeros(n)
    x[0] = 0.3
    x[3::2] = 5.0
    k.initialize_known(x, P)
    k.filter_method = 1                    # conventional: one joint update a period
    s = k.smooth()
    out.write(f'case {hives}\n')
    for t in range(periods):
        out.write(f'visit {(days[t] - START).days}\n')
        for i in range(hives):
            if not np.isnan(reads[i, t]):
                out.write(f'read {i} {reads[i, t]:.2f} {errors[i]:.2f}\n')
        out.write(f'flow {s.filtered_state[0, t]:.15e} {s.filtered_state_cov[0, 0, t]:.15e}\n')
        for i in range(hives):
            h = 3 + 2 * i
            out.write(f'honey {i} {s.filtered_state[h, t]:.15e} {s.filtered_state_cov[h, h, t]:.15e} '
                      f'{s.smoothed_state[h, t]:.15e} {s.smoothed_state_cov[h, h, t]:.15e}\n')
    out.write(f'loglik {s.llf_obs.sum():.15e}\n')


with open(pathlib.Path(__file__).with_name('joint_filter.txt'), 'w', encoding='ascii') as out:
    out.write('# made by joint_filter.py with statsmodels; do not edit\n')
    run(1, 1, out)
    run(4, 2, out)
    run(25, 3, out)
