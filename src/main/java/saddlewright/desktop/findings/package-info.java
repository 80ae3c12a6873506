/**
 * What the rule book says of the case and how one answers it: findings, questions, waivers, rule
 * pages. Here stand only their panel and its parts; the judgement is made in {@code rules} and the
 * signs on the sheet are drawn by {@code desktop.sheet}.
 */
package saddlewright.desktop.findings;
