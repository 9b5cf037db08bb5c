-- A record of three lines in form 1, as it was written before lines had the identity of the actor. The digests were
-- computed outside Java from the description in the package audit.
insert into record_line
(number, written_at, actor, role, device, subject, subject_id, action, before_text, after_text, reason,
previous_digest, digest)
values (1, '2026-11-21 08:30:00.125+00:00', 'Rune Frost', 'referee', '10.0.0.2', 'entry', 'e-1', 'entry.entered', '', 'Icefern', 'late, by word of mouth',
'0000000000000000000000000000000000000000000000000000000000000000',
'a6203a226121ccbbdddd2b7ac54d5d620980f6081e504b7930525b6faa047ece');
insert into record_line
(number, written_at, actor, role, device, subject, subject_id, action, before_text, after_text, reason,
previous_digest, digest)
values (2, '2026-11-22 08:30:00.125+00:00', 'Rune Frost', 'referee', '10.0.0.2', 'entry', 'e-1', 'entry.withdrawn', 'Icefern', 'withdrawn', 'two skaters ill',
'a6203a226121ccbbdddd2b7ac54d5d620980f6081e504b7930525b6faa047ece',
'd51d87460048b4f4941f71e378e88bad090658f3d48d5346b2e0d5caac566ca3');
insert into record_line
(number, written_at, actor, role, device, subject, subject_id, action, before_text, after_text, reason,
previous_digest, digest)
values (3, '2026-11-23 08:30:00.125+00:00', 'Rune Frost', 'referee', '10.0.0.2', 'entry', 'e-1', 'entry.reinstated', 'withdrawn', 'Icefern', '',
'd51d87460048b4f4941f71e378e88bad090658f3d48d5346b2e0d5caac566ca3',
'10806d6b18754068bf2ea2825e847d9308e8ac0d41dc1a5af4fda8be6091e5f7');
update record_head set number = 3,
digest = '10806d6b18754068bf2ea2825e847d9308e8ac0d41dc1a5af4fda8be6091e5f7'
where id = 1;
