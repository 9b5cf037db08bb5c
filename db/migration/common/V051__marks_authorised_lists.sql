-- The technical controller authorises one version of the called elements; each later version is open again.
create table list_authorisation (
  id uuid primary key,
  performance_id uuid not null,
  sequence int not null,
  -- On paper the name that signed it, and who confirmed that; at the technical desk both are one.
  controller varchar(120) not null,
  confirmed_by varchar(120) not null,
  on_paper boolean not null,
  received_at timestamp(3) with time zone not null,
  constraint list_authorised_once unique (performance_id, sequence),
  constraint list_authorisation_list foreign key (performance_id, sequence)
  references called_list (performance_id, sequence)
);

alter table deduction_list add column origin varchar(20) default 'KEYED' not null;

-- A correction may also change the called elements or the deductions; it then names no seat, and what was and
-- what shall be are words, such as "ME3" and "ME4".
alter table correction alter column seat_id drop not null;
alter table correction add column old_text varchar(80) default '' not null;
alter table correction add column new_text varchar(80) default '' not null;
